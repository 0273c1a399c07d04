package rundlauf.planning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.Operation;
import rundlauf.planning.Fitting.Candidate;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.safety.Standing;

/** What a search found, as the plan of a setup. */
final class SetupPlans {
  /** Limits that the job itself asks for: a plan must be able to judge them. */
  private static final List<String> ASKED_BY_JOB =
      List.of("wall-error", "finish", "holding-in-plane", "holding-lift");

  /** Said once of a whole plan. */
  private static final String CHATTER = "chatter-not-examined";

  private SetupPlans() {}

  static Ranked of(
      JobTask task,
      Candidate candidate,
      SetupCharacter character,
      Standing standing,
      Search.Found found) {
    List<Saying> against = against(task, candidate, character, found);
    List<Saying> because = new ArrayList<>(character.because());
    because.addAll(against);
    double seconds = found.cut().seconds();
    Optional<Double> time =
        task.length().isPresent()
            ? Optional.of(seconds * task.length().getAsDouble())
            : Optional.empty();
    SetupPlan plan =
        new SetupPlan(
            character.name(),
            Optional.of(candidate.put().cutter().name()),
            Optional.of(character),
            Optional.of(found.prediction()),
            found.keeps() && against.isEmpty(),
            time,
            Optional.of(found.cut().passes()),
            found.boundBy(),
            standing,
            because,
            cautions(task, candidate, found));
    return new Ranked(plan, seconds);
  }

  /** What stands against it though its judged limits may all be kept. */
  private static List<Saying> against(
      JobTask task, Candidate candidate, SetupCharacter character, Search.Found found) {
    List<Saying> against = new ArrayList<>();
    if (task.feature() == Feature.ENGRAVE) {
      double eccentricity = character.eccentricity().central(0);
      Groove.offWidth(task, candidate.put().cutter(), eccentricity).ifPresent(against::add);
    }
    found.prediction().limits().stream()
        .filter(limit -> !limit.judged() && ASKED_BY_JOB.contains(limit.code()))
        .forEach(
            limit -> {
              against.add(
                  Saying.of(
                      "asked-limit-not-judged", limit.code(), Arg.term("limit-" + limit.code())));
              against.add(limit.why());
            });
    return against;
  }

  private static List<Saying> cautions(JobTask task, Candidate candidate, Search.Found found) {
    Set<Saying> cautions = new LinkedHashSet<>(candidate.said());
    Operation operation = found.cut().cut().operation();
    if (task.feature() == Feature.POCKET && operation != Operation.SLOT) {
      cautions.add(Saying.of("way-in-not-planned", "passes"));
    }
    if (task.material().chip().isEmpty()) {
      cautions.add(Saying.of("chip-window-assumed", "chip", Arg.of(task.material().name())));
    }
    found.prediction().cautions().stream()
        .filter(saying -> !saying.code().equals(CHATTER))
        .forEach(cautions::add);
    return List.copyOf(cautions);
  }
}
