package rundlauf.cutting.force;

import java.util.Arrays;

/**
 * Force at one angle as it follows from where the nose stands now and stood when the teeth before
 * made the surface, with its slopes. It keeps the last answer: one for each search.
 *
 * <p>Places of the nose come as N pairs x, y: pair q is where it stands q teeth on, and pair q − 1
 * (that before the first being the last) where it stood one tooth earlier.
 */
final class NoseForce {
  private final SoftCut cut;
  private final PieceChip piece;

  double x;
  double y;
  double axial;
  double torque;

  /** By m: what x and y gain when the nose stands farther out in x, in y, than m teeth ago. */
  final double[] xByX;

  final double[] xByY;
  final double[] yByX;
  final double[] yByY;

  NoseForce(SoftCut cut) {
    this.cut = cut;
    piece = new PieceChip(cut);
    xByX = new double[cut.teeth];
    xByY = new double[cut.teeth];
    yByX = new double[cut.teeth];
    yByY = new double[cut.teeth];
  }

  /**
   * Sums the force over all pieces of edge.
   *
   * @param angle index of the angle
   * @param stands N pairs of x and y [m]
   * @param q pair that stands now
   * @param blur by which the variation of the chip within a piece is widened, 1 for none
   */
  void at(int angle, double[] stands, int q, double blur) {
    clear();
    ForceLaw law = cut.law;
    for (int p = cut.contacts.first(angle); p < cut.contacts.first(angle + 1); p++) {
      piece.measure(p, stands, q, blur);
      if (piece.mean > 0) {
        add(law, p);
      }
    }
  }

  private void clear() {
    x = 0;
    y = 0;
    axial = 0;
    torque = 0;
    Arrays.fill(xByX, 0);
    Arrays.fill(xByY, 0);
    Arrays.fill(yByX, 0);
    Arrays.fill(yByY, 0);
  }

  private void add(ForceLaw law, int p) {
    double s = cut.contacts.sine(p);
    double c = cut.contacts.cosine(p);
    double b = cut.contacts.length(p);
    double raised = b * law.raised(piece.mean);
    double part = b * piece.part;
    double t = law.tCut() * raised + law.tEdge() * part;
    double r = law.rCut() * raised + law.rEdge() * part;
    x -= t * c + r * s;
    y += t * s - r * c;
    axial += law.aCut() * raised + law.aEdge() * part;
    torque += t * cut.radii[cut.contacts.edge(p)];
    double rising = law.power() * raised / piece.mean * piece.part;
    double bend = b * piece.bend;
    slope(s, c, law.tCut() * rising + law.tEdge() * bend, law.rCut() * rising + law.rEdge() * bend);
  }

  private void slope(double s, double c, double t, double r) {
    double byX = -(t * c + r * s);
    double byY = t * s - r * c;
    for (int m = 1; m < cut.teeth; m++) {
      double part = piece.weight[m];
      if (part > 0) {
        xByX[m] += part * byX * s;
        xByY[m] += part * byX * c;
        yByX[m] += part * byY * s;
        yByY[m] += part * byY * c;
      }
    }
  }
}
