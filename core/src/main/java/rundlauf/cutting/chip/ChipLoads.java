package rundlauf.cutting.chip;

import java.util.ArrayList;
import java.util.List;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;

/**
 * What each tooth takes on a nose that does not give way.
 *
 * @param teeth in their order
 * @param teethCutting how many of them cut anywhere
 * @param effectiveDiameter twice the radius of the farthest edge within the depth of cut: the width
 *     of the slot that is swept [m]
 */
public record ChipLoads(List<Tooth> teeth, int teethCutting, double effectiveDiameter) {
  /** A chip this small against the feed of a whole turn is rounding: our choice. */
  private static final double NOTHING = 1e-9;

  public ChipLoads {
    teeth = List.copyOf(teeth);
  }

  /**
   * What one tooth takes.
   *
   * @param tooth from 1
   * @param peak thickest chip anywhere on it [m]; 0 when it never cuts
   * @param share of the removed material, 0 to 1; the shares sum to 1
   */
  public record Tooth(int tooth, double peak, double share) {}

  /**
   * Chips by looking back at what the teeth before left (circular paths of the teeth).
   *
   * @param tool of N teeth
   * @param cut engagement and feed; SI
   * @param runout by which the teeth differ; SI
   * @return peaks [m], shares and the swept width [m]: exact for the model, the peaks to 1e-6 of
   *     the runout, the shares to about 1e-3 (slices, docs/methods/chip.md); no uncertainty of its
   *     own
   * @see "W.A. Kline, R.E. DeVor, Int. J. Mach. Tool Des. Res. 23 (1983) 123-140"
   */
  public static ChipLoads of(Tool tool, Conditions cut, ToolRunout runout) {
    EdgeRadii radii = EdgeRadii.of(tool, runout);
    double[] areas = areas(tool, cut, runout, radii);
    double total = 0;
    for (double area : areas) {
      total += area;
    }
    double nothing = NOTHING * tool.teeth() * cut.feedPerTooth();
    List<Tooth> teeth = new ArrayList<>();
    int cutting = 0;
    for (int k = 0; k < tool.teeth(); k++) {
      double peak = peak(k, tool, cut, radii);
      cutting += peak > nothing ? 1 : 0;
      teeth.add(new Tooth(k + 1, peak > nothing ? peak : 0, areas[k] / total));
    }
    return new ChipLoads(teeth, cutting, 2 * farthest(tool, cut, radii));
  }

  /** The width that is swept alone, as {@link #of} gives it [m]. */
  public static double effectiveDiameter(Tool tool, Conditions cut, ToolRunout runout) {
    return 2 * farthest(tool, cut, EdgeRadii.of(tool, runout));
  }

  /** What each tooth removes, as the integral of its chip over angle and height. */
  private static double[] areas(Tool tool, Conditions cut, ToolRunout runout, EdgeRadii radii) {
    double[] areas = new double[tool.teeth()];
    double entry = cut.entry(tool.diameter());
    double exit = cut.exit(tool.diameter());
    Slices slices = Slices.of(tool, cut, runout);
    for (int i = 0; i < slices.count(); i++) {
      double[][] leads = radii.lookBack(slices.middle(i));
      for (int k = 0; k < areas.length; k++) {
        for (ChipArc arc : ChipArcs.of(cut.feedPerTooth(), leads[k], entry, exit)) {
          areas[k] += arc.area();
        }
      }
    }
    return areas;
  }

  private static double peak(int tooth, Tool tool, Conditions cut, EdgeRadii radii) {
    double sine = largestSine(cut.entry(tool.diameter()), cut.exit(tool.diameter()));
    double c = cut.feedPerTooth();
    return HeightPeak.over(
        cut.axial(),
        Math.abs(tool.lag()),
        z -> ChipArcs.thickness(c, radii.lookBack(z)[tooth], sine));
  }

  /** Largest sin φ of the engagement: there every chip is thickest. */
  private static double largestSine(double entry, double exit) {
    boolean passesTheMiddle = entry <= Math.PI / 2 && exit >= Math.PI / 2;
    return passesTheMiddle ? 1 : Math.max(Math.sin(entry), Math.sin(exit));
  }

  private static double farthest(Tool tool, Conditions cut, EdgeRadii radii) {
    double farthest = 0;
    for (int k = 0; k < tool.teeth(); k++) {
      int tooth = k;
      farthest =
          Math.max(
              farthest,
              HeightPeak.over(cut.axial(), Math.abs(tool.lag()), z -> radii.at(tooth, z)));
    }
    return farthest;
  }
}
