package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;

/**
 * A side-load trial understood. SI; angles in radians; struck rows left out.
 *
 * @param forceScale true force over the stated force: 1 with a cause for each doubt in mass, arms
 *     and gravity that all points share
 * @param contact distance of the load from the nut's face
 * @param body the shank that bends
 * @param reference where the indicator's foot stands: table, base, carriage, mount
 * @param reaction what the load pushes off from
 * @param nose of the spindle, where a bench tells it
 * @param stand what the dial's stand was seen to give way
 * @param points in the order taken
 */
public record LoadReadings(
    TrialHead head,
    IndicatorLimits indicator,
    Measured forceScale,
    Optional<Quantity> contact,
    Optional<Body> body,
    Optional<String> reference,
    Optional<String> reaction,
    Optional<Nose> nose,
    Optional<Stand> stand,
    List<Point> points) {

  public LoadReadings {
    points = List.copyOf(points);
  }

  /** With a stand that was not checked. */
  public LoadReadings(
      TrialHead head,
      IndicatorLimits indicator,
      Measured forceScale,
      Optional<Quantity> contact,
      Optional<Body> body,
      Optional<String> reference,
      Optional<String> reaction,
      Optional<Nose> nose,
      List<Point> points) {
    this(
        head,
        indicator,
        forceScale,
        contact,
        body,
        reference,
        reaction,
        nose,
        Optional.empty(),
        points);
  }

  /** The same with a check of the dial's stand. */
  public LoadReadings withStand(Optional<Stand> checked) {
    return new LoadReadings(
        head, indicator, forceScale, contact, body, reference, reaction, nose, checked, points);
  }

  /** Without what a bench tells of the spindle's nose. */
  public LoadReadings(
      TrialHead head,
      IndicatorLimits indicator,
      Measured forceScale,
      Optional<Quantity> contact,
      Optional<Body> body,
      Optional<String> reference,
      Optional<String> reaction,
      List<Point> points) {
    this(head, indicator, forceScale, contact, body, reference, reaction, Optional.empty(), points);
  }

  /** How far the middle of the clamp lies behind the nut's face, of the spindle by its name. */
  public record Nose(String spindle, Quantity toMount) {}

  /**
   * What the needle showed when the dial's own stand was pushed.
   *
   * @param record it belongs to: trials with one stand share its doubt
   * @param give most that the needle moved, over the force [m/N]
   */
  public record Stand(String record, double give) {}

  /** The shank: diameter [m] and modulus [Pa]. */
  public record Body(Quantity diameter, Quantity modulus) {}

  /**
   * One reading.
   *
   * @param load force [N], 0 or more, as stated (before {@code forceScale})
   * @param reading the dial's own [m], rising as the surface moves along {@code dial}
   * @param place the body touched: shank, nut, housing, mount, …
   * @param at its distance from the nut's face [m]; empty when not given
   * @param direction of the push, from machine +X toward +Y [rad]
   * @param dial the direction the dial reads along [rad]
   * @param branch whether the load was rising or falling
   * @param zeroed counts how often the dial has been set anew
   * @param line in the file
   * @param contact distance of the load from the nut's face [m], where it is not the trial's
   */
  public record Point(
      double load,
      double reading,
      String place,
      Optional<Double> at,
      double direction,
      double dial,
      Branch branch,
      int zeroed,
      int line,
      Optional<Double> contact) {

    /** With the load where the trial has it. */
    public Point(
        double load,
        double reading,
        String place,
        Optional<Double> at,
        double direction,
        double dial,
        Branch branch,
        int zeroed,
        int line) {
      this(load, reading, place, at, direction, dial, branch, zeroed, line, Optional.empty());
    }

    /** The same with the load at another distance, or where the trial has it. */
    public Point loadedAt(Optional<Double> distance) {
      return new Point(load, reading, place, at, direction, dial, branch, zeroed, line, distance);
    }
  }

  /** Load rising or falling, or not said. */
  public enum Branch {
    UP,
    DOWN,
    UNSAID
  }
}
