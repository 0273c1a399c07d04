package rundlauf.cli;

import java.util.List;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.JobPlan;
import rundlauf.planning.SetupPlan;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
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

  /** Cautions that say what a prediction is, not what was found in this one. */
  private static final List<String> SAID_OF_ALL =
      List.of(
          "chatter-not-examined",
          "material-guessed",
          "material-from-memory",
          "coefficients-low",
          "coefficients-without-doubt",
          "chip-below-tables",
          "pull-not-judged");

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

  /**
   * How a prediction ends: refused where its forces cannot be had, to be looked at where a limit
   * does not hold or a caution is more than what is said of every such cut.
   */
  static Exit of(Prediction found) {
    if (!found.figures().at("force.peak.lateral").known()) {
      return REFUSED;
    }
    boolean fails = found.limits().stream().anyMatch(limit -> limit.judged() && !limit.holds());
    boolean look = found.cautions().stream().anyMatch(s -> !SAID_OF_ALL.contains(s.code()));
    return fails || look ? LOOK : DONE;
  }

  /** How a plan ends: to be looked at where no setup will do, or one is on hold. */
  static Exit of(JobPlan plan) {
    boolean held = plan.setups().stream().anyMatch(SetupPlan::held);
    return held || !plan.possible() ? LOOK : DONE;
  }

  private static boolean hasMainFigure(Reduced result) {
    if (result instanceof Runout runout) {
      return runout.stations().stream().anyMatch(station -> station.tir().known());
    }
    if (result instanceof SideLoad load) {
      return load.stiffness().known();
    }
    if (result instanceof Axial axial) {
      return axial.endPlay().known() || axial.axialStiffness().known();
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
