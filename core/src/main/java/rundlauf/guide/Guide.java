package rundlauf.guide;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Trial;
import rundlauf.readings.Intended;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Reduced;

/** Says what comes next in a trial that is being taken. */
public final class Guide {
  /** Our choice: two sweeps of a coarse dial, and the page stays small. */
  private static final int MOST_AHEAD = 36;

  private Guide() {}

  /**
   * What a sheet says at this point.
   *
   * @param trial as typed so far
   * @param soFar its figures, where it bears any yet
   * @return the steps that no row answers; rows off the plan and struck rows answer none
   * @throws rundlauf.quantity.Refused when what was intended cannot be read
   */
  public static Guidance next(Trial trial, Optional<Reduced> soFar) {
    TypedRows typed = TypedRows.of(trial);
    Plan plan = plan(trial, typed);
    Plan.Progress progress = plan.progress(typed.rows());
    boolean planned = !plan.steps().isEmpty();
    int done = planned ? progress.done() : typed.rows().size();
    return new Guidance(
        progress.open().stream().limit(MOST_AHEAD).toList(),
        plan.more(),
        done,
        planned ? plan.steps().size() : done,
        progress.open().isEmpty() ? Enough.of(soFar, typed.rows().size()) : Optional.empty(),
        Unsaid.of(trial));
  }

  /** A trial that was not planned for, and most of whose rows no step asked for, goes on freely. */
  private static Plan plan(Trial trial, TypedRows typed) {
    Plan plan = whole(trial, typed);
    Plan.Progress progress = plan.progress(typed.rows());
    boolean meant = trial.document().get("intended").isPresent();
    return meant || progress.done() >= progress.beside() ? plan : new Plan(List.of(), plan.more());
  }

  private static Plan whole(Trial trial, TypedRows typed) {
    Intended intended = Intended.of(trial);
    return switch (TrialKind.of(trial)) {
      case RUNOUT -> RunoutPlan.of(intended, typed);
      case SIDE_LOAD -> PushPlan.side(intended, typed, text(trial, "reference"));
      case AXIAL -> PushPlan.axial(intended, typed);
      case GROWTH -> GrowthPlan.of(intended, typed);
      case SPEED -> SpeedPlan.of(intended, typed);
      case INSPECTION -> InspectionPlan.of();
    };
  }

  private static String text(Trial trial, String field) {
    return trial.document().get(field).orElse(null) instanceof rundlauf.bench.Entry.Scalar s
        ? s.text().strip()
        : "";
  }
}
