package rundlauf.simulated;

import rundlauf.maths.Stream;

/** The works of a dial: remembers where backlash and friction left it. */
final class Needle {
  private final Dial dial;
  private final double beginning;
  private final Stream stream;
  private int taken;
  private double behindBacklash;
  private double shown;

  Needle(Dial dial, double beginning, Stream stream) {
    this.dial = dial;
    this.beginning = beginning;
    this.stream = stream;
  }

  /** The needle when the surface stands at {@code surface} [m]. */
  double follow(double surface) {
    Nuisances n = dial.nuisances();
    double scatter = n.scatter() > 0 ? n.scatter() * stream.gaussian() : 0;
    double travel = (surface + scatter + n.drift() * taken) / Math.cos(dial.angle());
    if (taken == 0) {
      behindBacklash = travel + n.retrace() * (stream.uniform() - 0.5);
      shown = behindBacklash;
    }
    double half = n.retrace() / 2;
    behindBacklash = Math.max(travel - half, Math.min(travel + half, behindBacklash));
    if (Math.abs(behindBacklash - shown) > n.stick()) {
      shown = behindBacklash;
    }
    double slipped = n.slipAt() >= 0 && taken >= n.slipAt() ? n.slip() : 0;
    taken++;
    return shown + smoothError(shown) + slipped;
  }

  private double smoothError(double at) {
    Nuisances n = dial.nuisances();
    return n.limitOfError() / 2 * Math.sin(2 * Math.PI * (at + beginning) / n.errorWave());
  }
}
