package rundlauf.report;

import java.util.List;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;

/**
 * How far the nose gives way along a push, by the push's direction: from machine +X toward +Y.
 *
 * @param angle how angles are printed
 * @param compliance how compliances are printed
 * @param angles rad, the first again at the end
 * @param curve as many compliances [m/N]
 * @param low lower ends of their intervals
 * @param high upper ends
 * @param axes soft, then stiff
 * @param pushes directions that were pushed
 * @param span m/N
 */
public record ComplianceRose(
    String id,
    Saying caption,
    Saying summary,
    Scale angle,
    Scale compliance,
    Samples angles,
    Samples curve,
    Samples low,
    Samples high,
    List<Axis> axes,
    List<Push> pushes,
    double span,
    Table twin)
    implements Chart {
  public ComplianceRose {
    axes = List.copyOf(axes);
    pushes = List.copyOf(pushes);
  }

  /**
   * An axis, which points both ways.
   *
   * @param angle rad
   * @param from lower end of its interval [rad]
   * @param to upper end
   * @param compliance along it [m/N]
   */
  public record Axis(Saying name, double angle, double from, double to, double compliance) {}

  /** What one push told: its direction [rad], the compliance along it and its interval [m/N]. */
  public record Push(double angle, double compliance, double low, double high) {}
}
