package rundlauf.cutting.force;

import java.util.Arrays;
import java.util.Optional;
import rundlauf.maths.LinearSystem;

/**
 * Where the nose is at rest at N angles one tooth apart: {@code d_q = compliance · force(d_q,
 * d_(q−1), …)}. At rest, angles that are not whole teeth apart have nothing to do with each other,
 * so each such set is a system of 2N equations; it is solved by Newton's method, from where the set
 * before it stood.
 */
final class NoseRest {
  private static final int MOST_STEPS = 25;
  private static final int MOST_HALVINGS = 14;

  /** Where a set does not yield, the blur is lowered from here to 1 by halves: our choice. */
  private static final double WIDEST_BLUR = 1024;

  private final SoftCut cut;
  private final NoseForce force;
  private final double complianceX;
  private final double complianceY;
  private final double near;
  private final double[] stands;
  private final double[] lefts;
  private final double[][] slopes;
  private double left;

  /** Still at the axis, and taken as at rest within {@code near} [m]. */
  NoseRest(SoftCut cut, double complianceX, double complianceY, double near) {
    this.cut = cut;
    this.complianceX = complianceX;
    this.complianceY = complianceY;
    this.near = near;
    force = new NoseForce(cut);
    stands = new double[2 * cut.teeth];
    lefts = new double[2 * cut.teeth];
    slopes = new double[2 * cut.teeth][2 * cut.teeth];
  }

  /**
   * Comes to rest at a set of angles.
   *
   * @param angle index of the first of them
   * @return how far from rest it stands at worst [m]
   */
  double settle(int angle) {
    double[] before = stands.clone();
    if (newton(angle, 1) <= near) {
      return left;
    }
    Arrays.fill(stands, 0);
    for (double blur = WIDEST_BLUR; blur >= 1; blur /= 2) {
      newton(angle, blur);
    }
    double missing = left;
    if (missing > near) {
      startAgainFrom(before);
    }
    return missing;
  }

  private void startAgainFrom(double[] before) {
    for (int j = 0; j < stands.length; j++) {
      stands[j] = before[j];
    }
  }

  /** All of it: N pairs of x and y [m]; a copy. */
  double[] stands() {
    return stands.clone();
  }

  private double newton(int angle, double blur) {
    weigh(angle, blur);
    for (int i = 0; i < MOST_STEPS && left > near; i++) {
      if (!step(angle, blur)) {
        break;
      }
    }
    return left;
  }

  /** One step of Newton, halved until it brings the set nearer to rest; false when none does. */
  private boolean step(int angle, double blur) {
    Optional<double[]> move = LinearSystem.solve(slopes, lefts);
    if (move.isEmpty()) {
      return false;
    }
    double[] from = stands.clone();
    double before = size();
    double portion = 1;
    for (int i = 0; i <= MOST_HALVINGS; i++) {
      for (int j = 0; j < from.length; j++) {
        stands[j] = from[j] - portion * move.get()[j];
      }
      weigh(angle, blur);
      if (size() < before) {
        return true;
      }
      portion /= 2;
    }
    return false;
  }

  private double size() {
    double sum = 0;
    for (double value : lefts) {
      sum += value * value;
    }
    return sum;
  }

  /** What is left to rest at each angle, and how it changes with where the nose stands. */
  private void weigh(int angle, double blur) {
    int pitch = cut.contacts.angles() / cut.teeth;
    left = 0;
    for (int q = 0; q < cut.teeth; q++) {
      force.at(angle + q * pitch, stands, q, blur);
      lefts[2 * q] = stands[2 * q] - complianceX * force.x;
      lefts[2 * q + 1] = stands[2 * q + 1] - complianceY * force.y;
      left = Math.max(left, Math.max(Math.abs(lefts[2 * q]), Math.abs(lefts[2 * q + 1])));
      layOut(q);
    }
  }

  private void layOut(int q) {
    double[] alongX = slopes[2 * q];
    double[] alongY = slopes[2 * q + 1];
    Arrays.fill(alongX, 0);
    Arrays.fill(alongY, 0);
    alongX[2 * q] = 1;
    alongY[2 * q + 1] = 1;
    for (int m = 1; m < cut.teeth; m++) {
      int then = Math.floorMod(q - m, cut.teeth);
      add(alongX, q, then, complianceX * force.xByX[m], complianceX * force.xByY[m]);
      add(alongY, q, then, complianceY * force.yByX[m], complianceY * force.yByY[m]);
    }
  }

  private static void add(double[] row, int now, int then, double byX, double byY) {
    row[2 * now] -= byX;
    row[2 * now + 1] -= byY;
    row[2 * then] += byX;
    row[2 * then + 1] += byY;
  }
}
