package rundlauf.cutting.prediction;

import rundlauf.cutting.Coefficients;
import rundlauf.cutting.deflection.Flexibility;

/** Whether the deflection changes the chip so much that it must be fed back. */
final class Feedback {
  /** Radial force by chip times the tip's compliance, from which it counts: design's tenth. */
  static final double FROM = 0.1;

  private static final double MILLIMETRE = 1e-3;

  private Feedback() {}

  /**
   * Whether {@code Krc ap} exceeds a tenth of the stiffness at the tip, cutter and setup together;
   * by Kienzle the slope of the radial force at the mean chip, {@code kr (1 − mc) kc11 h^−mc ap}.
   */
  static boolean counts(CutState state) {
    Flexibility flexibility = state.held().flexibility();
    double compliance = Math.max(flexibility.tipX(), flexibility.tipY());
    return slope(state) * state.cut().axial() * compliance > FROM;
  }

  private static double slope(CutState state) {
    Coefficients k = state.held().coefficients();
    if (k instanceof Coefficients.LinearEdge edge) {
      return Math.abs(edge.krc());
    }
    Coefficients.Kienzle power = (Coefficients.Kienzle) k;
    double h = meanChip(state) / MILLIMETRE;
    return power.radialRatio() * (1 - power.mc()) * power.kc11() * Math.pow(h, -power.mc());
  }

  private static double meanChip(CutState state) {
    double d = state.held().tool().diameter();
    double entry = state.cut().entry(d);
    double exit = state.cut().exit(d);
    return state.cut().feedPerTooth() * (Math.cos(entry) - Math.cos(exit)) / (exit - entry);
  }
}
