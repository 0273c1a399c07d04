package rundlauf.cutting.deflection;

import java.util.List;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;

/**
 * What stands in the cut at one moment: integrals along the engaged edges, each weighted with 1 +
 * sin φ (an edge part and a chip part of like size, as at a feed per tooth of 20 to 30 µm).
 *
 * @param length {@code ∫ w dz} [m]
 * @param height {@code ∫ w z dz} [m²]
 * @param sine {@code ∫ w sin φ dz} [m]
 * @param cosine {@code ∫ w cos φ dz} [m]
 * @param sineHeight {@code ∫ w z sin φ dz} [m²]
 * @param cosineHeight {@code ∫ w z cos φ dz} [m²]
 */
record EngagedEdges(
    double length,
    double height,
    double sine,
    double cosine,
    double sineHeight,
    double cosineHeight) {
  private static final double TURN = 2 * Math.PI;

  /** Gauss–Legendre on four points of the interval −1 to 1. */
  private static final double[] NODES = {
    -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526
  };

  private static final double[] WEIGHTS = {
    0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538
  };

  /**
   * The edges in the cut.
   *
   * @param angle of tooth 1 at the tip [rad]
   * @param cutting the teeth that cut, from 0
   */
  static EngagedEdges at(double angle, List<Integer> cutting, Tool tool, Conditions conditions) {
    double[] sums = new double[6];
    for (int tooth : cutting) {
      add(angle - TURN * tooth / tool.teeth(), tool, conditions, sums);
    }
    return new EngagedEdges(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]);
  }

  /** Adds what one tooth, at {@code tip} at the tip, has in the cut. */
  private static void add(double tip, Tool tool, Conditions conditions, double[] sums) {
    double top = tip - tool.lag() * conditions.axial();
    double entry = conditions.entry(tool.diameter());
    double exit = conditions.exit(tool.diameter());
    double least = Math.min(tip, top);
    double most = Math.max(tip, top);
    double first = Math.ceil((least - exit) / TURN);
    for (double turns = first; TURN * turns + entry <= most; turns++) {
      double low = Math.max(least, entry + TURN * turns);
      double high = Math.min(most, exit + TURN * turns);
      double lag = tool.lag();
      double from = lag == 0 ? 0 : Math.min((tip - low) / lag, (tip - high) / lag);
      double to = lag == 0 ? conditions.axial() : Math.max((tip - low) / lag, (tip - high) / lag);
      addArc(tip, lag, from, to, sums);
    }
  }

  private static void addArc(double tip, double lag, double from, double to, double[] sums) {
    double half = (to - from) / 2;
    for (int node = 0; node < NODES.length; node++) {
      double z = (from + to) / 2 + NODES[node] * half;
      double sine = Math.sin(tip - lag * z);
      double cosine = Math.cos(tip - lag * z);
      double weight = half * WEIGHTS[node] * (1 + sine);
      sums[0] += weight;
      sums[1] += weight * z;
      sums[2] += weight * sine;
      sums[3] += weight * cosine;
      sums[4] += weight * z * sine;
      sums[5] += weight * z * cosine;
    }
  }
}
