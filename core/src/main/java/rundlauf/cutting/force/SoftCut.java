package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.chip.EdgeRadii;
import rundlauf.cutting.chip.Slices;

/** A cut laid out piece by piece, for forces that depend on where the nose stands. */
final class SoftCut {
  /** Widest turn of the edge within a slice [rad]: our choice, by docs/methods/soft-nose.md. */
  private static final double WIDEST_TURN = 0.05;

  /** Least half-variation of the chip, by feed per tooth: our choice, docs/methods/soft-nose.md. */
  private static final double LEAST_HALF = 0.005;

  final Contacts contacts;
  final EndChips ends;
  final ForceLaw law;
  final int teeth;
  final double feed;
  final Slices slices;

  /** By piece of edge (slice · N + tooth) and m − 1: R_k − R_(k−m) [m]. */
  final double[] leads;

  /** By piece of edge: R_k [m]. */
  final double[] radii;

  private final double halfByCosine;

  private SoftCut(Tool tool, Conditions cut, Coefficients k, Turning turning, int angles) {
    contacts = Contacts.of(tool, cut, turning, angles);
    ends = new EndChips(tool, cut, turning, angles);
    law = ForceLaw.of(k);
    teeth = tool.teeth();
    feed = cut.feedPerTooth();
    slices = turning.slices();
    halfByCosine = feed * turning.width() / 2;
    radii = new double[slices.count() * teeth];
    leads = new double[radii.length * teeth];
    EdgeRadii edges = turning.radii();
    for (int slice = 0; slice < slices.count(); slice++) {
      double[][] ahead = edges.lookBack(slices.middle(slice));
      for (int tooth = 0; tooth < teeth; tooth++) {
        int edge = slice * teeth + tooth;
        radii[edge] = edges.at(tooth, slices.middle(slice));
        for (int m = 0; m < teeth; m++) {
          leads[edge * teeth + m] = ahead[tooth][m];
        }
      }
    }
  }

  static SoftCut of(Tool tool, Conditions cut, ToolRunout runout, Coefficients k, int angles) {
    double turn = Math.abs(tool.lag()) * cut.axial();
    int count = Math.max(Slices.of(tool, cut, runout).count(), (int) Math.ceil(turn / WIDEST_TURN));
    Slices slices = new Slices(count, cut.axial() / count);
    return of(tool, cut, runout, k, slices, angles);
  }

  /** The same with slices of the caller's choice. */
  static SoftCut of(
      Tool tool, Conditions cut, ToolRunout runout, Coefficients k, Slices slices, int angles) {
    return new SoftCut(tool, cut, k, Turning.of(tool, cut, runout, slices, angles), angles);
  }

  /** How far the chip varies to either side of its middle within a piece of edge [m]. */
  double half(int place) {
    return Math.max(leastHalf(), halfByCosine * Math.abs(contacts.cosine(place)));
  }

  /** Least of them [m]. */
  double leastHalf() {
    return LEAST_HALF * feed;
  }
}
