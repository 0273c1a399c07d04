package rundlauf.cutting.force;

import java.util.Arrays;

/**
 * Chip of one piece of edge on a nose that gives way: {@code h = min over m of (m c sin φ + R_k −
 * R_(k−m) + (d − d_m)·n)}, d_m where the nose stood m teeth ago; a whole turn ago it stood as now.
 *
 * <p>Within the piece the chip varies by ±half; its mean and the part that cuts are those of a chip
 * that is linear over the piece, so both change smoothly with d. Where h is near 0, the edge rides
 * on the surface with as much of its edge force as holds it there.
 */
final class PieceChip {
  private final SoftCut cut;

  /** In the middle of the piece; below 0 where the edge stands off [m]. */
  double middle;

  /** By m: how much the surface of m teeth ago counts, 0 to 1. */
  final double[] weight;

  /** Over the piece [m]. */
  double mean;

  /** Part of the piece that cuts, 0 to 1: the slope of the mean. */
  double part;

  /** Slope of the part [1/m]. */
  double bend;

  PieceChip(SoftCut cut) {
    this.cut = cut;
    weight = new double[cut.teeth];
  }

  void measure(int p, double[] stands, int q, double blur) {
    double s = cut.contacts.sine(p);
    double c = cut.contacts.cosine(p);
    int lead = cut.contacts.edge(p) * cut.teeth;
    double half = blur * cut.half(p);
    middle = cut.teeth * cut.feed * s;
    Arrays.fill(weight, 0);
    double now = stands[2 * q] * s + stands[2 * q + 1] * c;
    int then = q;
    for (int m = 1; m < cut.teeth; m++) {
      then = then == 0 ? cut.teeth - 1 : then - 1;
      double stood = stands[2 * then] * s + stands[2 * then + 1] * c;
      join(m, m * cut.feed * s + cut.leads[lead + m - 1] + now - stood, half);
    }
    average(half);
  }

  /** Takes the smaller, and passes smoothly from one to the other where they are close. */
  private void join(int m, double h, double width) {
    double other = Math.max(0, Math.min(1, 0.5 + (middle - h) / (2 * width)));
    if (other == 0) {
      return;
    }
    middle = (1 - other) * middle + other * h - width * other * (1 - other);
    for (int j = 1; j < m; j++) {
      weight[j] *= 1 - other;
    }
    weight[m] = other;
  }

  private void average(double half) {
    if (middle >= half) {
      mean = middle;
      part = 1;
      bend = 0;
    } else if (middle <= -half) {
      mean = 0;
      part = 0;
      bend = 0;
    } else {
      mean = (middle + half) * (middle + half) / (4 * half);
      part = (middle + half) / (2 * half);
      bend = 1 / (2 * half);
    }
  }
}
