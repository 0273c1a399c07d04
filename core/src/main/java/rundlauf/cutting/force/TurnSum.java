package rundlauf.cutting.force;

import java.util.Arrays;
import rundlauf.cutting.chip.ChipArc;
import rundlauf.maths.Samples;

/** Forces over a turn as they are summed, at even angles φ_i = 2π i / n. */
final class TurnSum {
  private final int n;
  private final double step;
  private final double[] sin;
  private final double[] cos;
  private final double[] x;
  private final double[] y;
  private final double[] axial;
  private final double[] torque;

  TurnSum(int n) {
    this.n = n;
    step = 2 * Math.PI / n;
    sin = new double[n];
    cos = new double[n];
    for (int i = 0; i < n; i++) {
      sin[i] = Math.sin(i * step);
      cos[i] = Math.cos(i * step);
    }
    x = new double[n];
    y = new double[n];
    axial = new double[n];
    torque = new double[n];
  }

  /**
   * Adds one stretch of one tooth in one slice. At each angle the slice spans a window of the
   * tooth's angles, from φ − behind − width/2 to φ − behind + width/2; the part of it within the
   * stretch is summed.
   *
   * @param behind how far the slice's middle stands behind tooth 1 at the tip [rad]
   * @param width of the window [rad], over 0
   * @param thickness of the slice [m]
   * @param radius lever of the tangential force [m]
   */
  void add(
      ArcForce force, ChipArc arc, double behind, double width, double thickness, double radius) {
    double toLow = behind + width / 2;
    double toHigh = behind - width / 2;
    Edge low = new Edge(toLow, arc.from());
    Edge high = new Edge(toHigh, arc.to());
    double share = thickness / width;
    double[] sum = new double[4];
    int last = (int) Math.ceil((arc.to() + toLow) / step) - 1;
    for (int i = (int) Math.floor((arc.from() + toHigh) / step) + 1; i <= last; i++) {
      int at = Math.floorMod(i, n);
      low.turnTo(i * step, sin[at], cos[at], i * step - toLow > arc.from());
      high.turnTo(i * step, sin[at], cos[at], i * step - toHigh < arc.to());
      Arrays.fill(sum, 0);
      force.add(low.angle, low.sine, low.cosine, high.angle, high.sine, high.cosine, sum);
      x[at] += share * sum[0];
      y[at] += share * sum[1];
      axial[at] += share * sum[2];
      torque[at] += share * radius * sum[3];
    }
  }

  /** One edge of the window, or the end of the stretch where the window goes beyond it. */
  private static final class Edge {
    private final double back;
    private final double sinBack;
    private final double cosBack;
    private final double end;
    private final double sinEnd;
    private final double cosEnd;
    private double angle;
    private double sine;
    private double cosine;

    Edge(double back, double end) {
      this.back = back;
      this.sinBack = Math.sin(back);
      this.cosBack = Math.cos(back);
      this.end = end;
      this.sinEnd = Math.sin(end);
      this.cosEnd = Math.cos(end);
    }

    /** Sine and cosine of a difference, without asking for them anew. */
    void turnTo(double phi, double sinPhi, double cosPhi, boolean within) {
      angle = within ? phi - back : end;
      sine = within ? sinPhi * cosBack - cosPhi * sinBack : sinEnd;
      cosine = within ? cosPhi * cosBack + sinPhi * sinBack : cosEnd;
    }
  }

  Samples x() {
    return Samples.of(x);
  }

  Samples y() {
    return Samples.of(y);
  }

  Samples axial(AxialForce sign) {
    return sign.signed(axial);
  }

  Samples torque() {
    return Samples.of(torque);
  }
}
