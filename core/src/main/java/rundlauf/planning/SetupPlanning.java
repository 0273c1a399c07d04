package rundlauf.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Holder;
import rundlauf.bench.Setup;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.prediction.Allowed;
import rundlauf.cutting.prediction.CutTask;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.planning.Fitting.Candidate;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.safety.Standing;

/** Plans a job on one setup. */
final class SetupPlanning {
  private final JobTask task;
  private final Setup setup;
  private final Knowledge knowledge;
  private final Standing standing;
  private final OptionalDouble holderSpeed;
  private final Draws draws;
  private final int states;
  private final Work work;

  private SetupPlanning(
      JobTask task,
      Bench bench,
      Setup setup,
      Knowledge knowledge,
      Draws draws,
      int states,
      Work work) {
    this.task = task;
    this.setup = setup;
    this.knowledge = knowledge;
    this.standing = knowledge.standing().apply(setup);
    this.holderSpeed = JobTasks.si(setup.holder().flatMap(bench::holder).flatMap(Holder::maxSpeed));
    this.draws = draws;
    this.states = states;
    this.work = work;
  }

  /**
   * The job on this setup with the best of the cutters that fit it.
   *
   * @param states joint draws of {@code draws}, the same for every setup
   */
  static Ranked plan(
      JobTask task,
      Bench bench,
      Setup setup,
      Knowledge knowledge,
      Draws draws,
      int states,
      Work work) {
    var planning = new SetupPlanning(task, bench, setup, knowledge, draws, states, work);
    if (task.feature() == Feature.DRILL) {
      return planning.nothing(
          List.of(Saying.of("drilling-not-predicted", "feature", Arg.of(task.job().name()))));
    }
    Fitting fitting = Fitting.of(task, bench, setup);
    return fitting.candidates().stream()
        .map(candidate -> planning.with(candidate))
        .min(Comparator.naturalOrder())
        .orElseGet(() -> planning.nothing(fitting.reasons()));
  }

  private Ranked nothing(List<Saying> because) {
    return nothing(Optional.empty(), Optional.empty(), because);
  }

  private Ranked nothing(
      Optional<String> cutter, Optional<SetupCharacter> character, List<Saying> because) {
    List<Saying> all = new ArrayList<>(knowledge.hold().apply(setup));
    all.addAll(because);
    return new Ranked(
        new SetupPlan(
            setup.name(),
            cutter,
            character,
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            standing,
            all,
            character.map(SetupCharacter::cautions).orElse(List.of())),
        Double.POSITIVE_INFINITY);
  }

  private Ranked with(Candidate candidate) {
    SetupCharacter character = knowledge.character().apply(candidate.put());
    Optional<String> cutter = Optional.of(candidate.put().cutter().name());
    if (character.eccentricity().figure() instanceof Missing missing) {
      return nothing(cutter, Optional.of(character), List.of(missing.why()));
    }
    Optional<SpeedRange> speeds =
        SpeedRange.of(character, candidate.inUse(), holderSpeed, task.material());
    if (speeds.isEmpty()) {
      Missing unknown = (Missing) character.fastest().figure();
      return nothing(cutter, Optional.of(character), List.of(unknown.why()));
    }
    Grid grid = Grid.of(task, candidate.inUse(), speeds.get().slowest(), speeds.get().fastest());
    Allowed allowed = task.allowed(holderSpeed);
    GridCut any = grid.quickestFirst().get(0);
    CutTask first = new CutTask(candidate.inUse(), any.cut(), task.material(), character, allowed);
    return SetupPlans.of(
        task, candidate, character, standing, Search.in(grid, first, draws, states, work));
  }
}
