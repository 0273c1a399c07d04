package rundlauf.cutting.force;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Samples;

/** A turn on a nose that gives way, as it is put together. */
final class SoftSum {
  private final SoftCut cut;
  private final NoseForce force;
  private final PieceChip piece;
  private final double[] x;
  private final double[] y;
  private final double[] axial;
  private final double[] torque;
  private final double[] tipX;
  private final double[] tipY;
  private final double[] peaks;
  private final double[] areas;

  SoftSum(SoftCut cut) {
    this.cut = cut;
    force = new NoseForce(cut);
    piece = new PieceChip(cut);
    int angles = cut.contacts.angles();
    x = new double[angles];
    y = new double[angles];
    axial = new double[angles];
    torque = new double[angles];
    tipX = new double[angles];
    tipY = new double[angles];
    peaks = new double[cut.teeth];
    areas = new double[cut.teeth];
  }

  /** Takes up N angles one tooth apart, from the first, and where the nose stands at them. */
  void add(int first, double[] stands) {
    int pitch = cut.contacts.angles() / cut.teeth;
    for (int q = 0; q < cut.teeth; q++) {
      int i = first + q * pitch;
      force.at(i, stands, q, 1);
      x[i] = force.x;
      y[i] = force.y;
      axial[i] = force.axial;
      torque[i] = force.torque;
      tipX[i] = stands[2 * q];
      tipY[i] = stands[2 * q + 1];
      takeChips(i, stands, q);
      cut.ends.raise(i, stands, q, peaks);
    }
  }

  private void takeChips(int angle, double[] stands, int q) {
    for (int p = cut.contacts.first(angle); p < cut.contacts.first(angle + 1); p++) {
      piece.measure(p, stands, q, 1);
      int tooth = cut.contacts.edge(p) % cut.teeth;
      areas[tooth] += piece.mean * cut.contacts.length(p);
      peaks[tooth] = Math.max(peaks[tooth], piece.middle);
    }
  }

  ForceTurn turn(AxialForce sign) {
    return new ForceTurn(
        Samples.of(x),
        Samples.of(y),
        sign.signed(axial),
        Samples.of(torque),
        teeth(),
        Samples.of(tipX),
        Samples.of(tipY));
  }

  /** A chip no thicker than the least blur is that of an edge that rides without cutting. */
  private List<ForceTurn.ToothLoad> teeth() {
    double total = Samples.of(areas).sum();
    List<ForceTurn.ToothLoad> teeth = new ArrayList<>();
    for (int k = 0; k < areas.length; k++) {
      double peak = peaks[k] > cut.leastHalf() ? peaks[k] : 0;
      teeth.add(new ForceTurn.ToothLoad(k + 1, peak, areas[k] / total));
    }
    return teeth;
  }
}
