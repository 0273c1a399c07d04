package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;

/**
 * The nose seen from the tool's side: where the marks stand, and how far off the spindle's axis
 * each part puts the tool. All angles are counted from the spindle's mark, forward in its running
 * direction.
 *
 * @param clockwise whether forward is clockwise, seen so
 * @param angle how angles are printed
 * @param length how distances are printed
 * @param marks the spindle's first
 * @param arrows one a part, in the order spindle, collet, shank
 * @param together all of them as one
 * @param within upper end of the interval of what the next clamping will be [m]
 * @param span m; the same for all dials of a trial, so that they compare by eye
 */
public record ClockingDial(
    String id,
    Saying caption,
    Saying summary,
    boolean clockwise,
    Scale angle,
    Scale length,
    List<Mark> marks,
    List<Arrow> arrows,
    Arrow together,
    double within,
    double span,
    Table twin)
    implements Chart {
  public ClockingDial {
    marks = List.copyOf(marks);
    arrows = List.copyOf(arrows);
  }

  /** Whose mark it is. */
  public enum Part {
    SPINDLE,
    COLLET,
    SHANK
  }

  /** A mark and how far forward it stands [rad]. */
  public record Mark(Part part, Saying name, double angle) {}

  /**
   * How far, and where to, the tool is put off the axis.
   *
   * @param length m
   * @param angle rad
   * @param told whether the readings tell a direction at all
   * @param region what holds its head with 95 %
   */
  public record Arrow(
      Saying name, double length, double angle, boolean told, Optional<Region> region) {}

  /** A closed line by its points: distances from the axis [m] and angles [rad]. */
  public record Region(Samples lengths, Samples angles) {}
}
