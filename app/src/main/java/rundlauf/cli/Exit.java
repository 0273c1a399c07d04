package rundlauf.cli;

import rundlauf.reduce.Reduced;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.report.BenchComparison;
import rundlauf.safety.Inspection;

/** How a command ended. */
public enum Exit {
  /** Done. */
  DONE(0, 0),
  /** A fault of ours. */
  FAULT(1, 4),
  /** It was not called as it has to be. */
  USAGE(2, 3),
  /** An input was refused. */
  REFUSED(3, 2),
  /** Done, and something was found that must be looked at. */
  LOOK(4, 1);

  private final int status;
  private final int weight;

  Exit(int status, int weight) {
    this.status = status;
    this.weight = weight;
  }

  /**
   * How a reduced trial ends: refused where its main figure cannot be had, to be looked at where
   * there is a caution or a hold.
   */
  static Exit of(Reduced result) {
    if (!hasMainFigure(result)) {
      return REFUSED;
    }
    boolean held = result instanceof Inspection inspection && inspection.hold();
    return held || !result.cautions().isEmpty() ? LOOK : DONE;
  }

  /** How a comparison ends. */
  static Exit of(BenchComparison found) {
    if (found.lacksTrials()) {
      return REFUSED;
    }
    return found.hasCautions() ? LOOK : DONE;
  }

  private static boolean hasMainFigure(Reduced result) {
    if (result instanceof Runout runout) {
      return runout.stations().stream().anyMatch(station -> station.tir().known());
    }
    if (result instanceof SideLoad load) {
      return load.stiffness().known();
    }
    return !(result instanceof Speed speed) || speed.usableMax().known();
  }

  public int status() {
    return status;
  }

  /** Of two endings the one that counts: 1 over 3 over 4 over 0. */
  Exit and(Exit other) {
    return other.weight > weight ? other : this;
  }
}
