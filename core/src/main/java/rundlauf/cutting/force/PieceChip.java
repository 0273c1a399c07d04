package rundlauf.cutting.force;

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

  /** How many teeth ago the surface was made. */
  int age;

  /** Over the piece [m]. */
  double mean;

  /** Part of the piece that cuts, 0 to 1: the slope of the mean. */
  double part;

  /** Slope of the part [1/m]. */
  double bend;

  PieceChip(SoftCut cut) {
    this.cut = cut;
  }

  void measure(int p, double[] stands, int q, double blur) {
    double s = cut.contacts.sine(p);
    double c = cut.contacts.cosine(p);
    int lead = cut.contacts.edge(p) * cut.teeth;
    middle = cut.teeth * cut.feed * s;
    age = cut.teeth;
    double now = stands[2 * q] * s + stands[2 * q + 1] * c;
    int then = q;
    for (int m = 1; m < cut.teeth; m++) {
      then = then == 0 ? cut.teeth - 1 : then - 1;
      double stood = stands[2 * then] * s + stands[2 * then + 1] * c;
      double h = m * cut.feed * s + cut.leads[lead + m - 1] + now - stood;
      if (h < middle) {
        middle = h;
        age = m;
      }
    }
    average(blur * cut.half(p));
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
