package rundlauf.character;

import java.util.Optional;
import rundlauf.bench.Spindle;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * Shaft power over input power.
 *
 * @param ratio with its doubt
 * @param assumed what is assumed; empty when it was typed
 */
record Efficiency(Measured ratio, Optional<Saying> assumed) {
  /**
   * Usual efficiencies of small motors at their rated load, with their drive: from memory of
   * handbooks' ranges, half-widths our choice, wide enough for a good and a poor one.
   *
   * @param drive as typed; the last row stands for any other
   */
  private record Usual(String drive, double ratio, double half) {}

  private static final Usual[] TABLE = {
    new Usual("brushed-dc", 0.70, 0.10),
    new Usual("universal", 0.55, 0.15),
    new Usual("brushless", 0.80, 0.10),
    new Usual("induction", 0.70, 0.10),
    new Usual("other", 0.60, 0.20)
  };

  /** The spindle's own, or what is usual for its drive. */
  static Efficiency of(Spindle spindle) {
    Cause cause = Cause.rectangular("spindle/" + spindle.name(), "efficiency");
    if (spindle.efficiency().isPresent()) {
      return new Efficiency(spindle.efficiency().get().measured(cause), Optional.empty());
    }
    Usual usual = usual(spindle.drive().orElse("other"));
    Saying saying =
        Saying.of(
            "efficiency-assumed",
            "power",
            Arg.of(usual.ratio, Unit.PERCENT),
            Arg.of(usual.half, Unit.PERCENT),
            Arg.term("drive-" + usual.drive));
    Measured ratio = Measured.exact(usual.ratio, Unit.ONE).with(cause, usual.half / Math.sqrt(3));
    return new Efficiency(ratio, Optional.of(saying));
  }

  private static Usual usual(String drive) {
    for (Usual one : TABLE) {
      if (one.drive.equals(drive)) {
        return one;
      }
    }
    return TABLE[TABLE.length - 1];
  }
}
