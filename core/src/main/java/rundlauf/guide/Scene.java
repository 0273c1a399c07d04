package rundlauf.guide;

import java.util.OptionalDouble;

/** What the drawing beside a step shows; SI, angles in radians. */
public sealed interface Scene {
  /**
   * The spindle turned to an angle, the dial at a station.
   *
   * @param angle from the mark, in the running direction
   * @param station from the nut's face
   */
  record Runout(double angle, OptionalDouble station) implements Scene {}

  /**
   * A push from the side.
   *
   * @param direction of the push, from machine +X toward +Y
   * @param place the body that the dial touches
   * @param load as the step words it: {@code 10 N}, {@code 2 masses}
   * @param reference where the dial's foot stands
   */
  record SideLoad(double direction, String place, String load, String reference) implements Scene {}

  /**
   * A push along the axis.
   *
   * @param direction {@code push}: toward the housing, or {@code pull}
   */
  record Axial(String direction, String load) implements Scene {}

  /** The nose growing as it warms. */
  record Growth() implements Scene {}

  /** A mark on the nose and what counts it. */
  record Speed() implements Scene {}

  /**
   * A look at the spindle.
   *
   * @param item of the safety list
   */
  record Inspection(String item) implements Scene {}
}
