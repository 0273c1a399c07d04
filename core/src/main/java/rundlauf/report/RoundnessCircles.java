package rundlauf.report;

import java.util.List;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;

/**
 * The form that a sweep bears, without its offset, and the reference circles about it; all as
 * heights over the circle that the profile's own centre has.
 *
 * @param angle how angles are printed
 * @param length how heights are printed
 * @param angles rad, the first again at the end
 * @param profile as many heights [m]
 * @param circles drawn about it
 * @param span m; the same for all sweeps of a trial, so that they compare by eye
 */
public record RoundnessCircles(
    String id,
    Saying caption,
    Saying summary,
    Scale angle,
    Scale length,
    Samples angles,
    Samples profile,
    List<Line> circles,
    double span,
    Table twin)
    implements Chart {
  public RoundnessCircles {
    circles = List.copyOf(circles);
  }

  /** Which of the reference circles; minimum zone has two. */
  public enum Kind {
    LEAST_SQUARES,
    ZONE_INNER,
    ZONE_OUTER,
    CIRCUMSCRIBED,
    INSCRIBED
  }

  /**
   * One circle: its heights at the angles, and its centre about the profile's own [m].
   *
   * @param along of the centre, toward angle 0
   * @param across toward 90 degrees
   */
  public record Line(Kind kind, Saying name, Samples heights, double along, double across) {}
}
