package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.compare.SetupResults;
import rundlauf.compare.Trait;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.Reduced;
import rundlauf.safety.Inspection;
import rundlauf.safety.SetupCautions;
import rundlauf.safety.Standing;
import rundlauf.safety.norm.Norms;

/**
 * Every setup of a bench side by side.
 *
 * @param results what was made of its trials
 * @param setups in the bench's order
 */
public record BenchComparison(BenchResults results, List<SetupSide> setups) {
  public BenchComparison {
    setups = List.copyOf(setups);
  }

  /** Sets the setups side by side by the latest result of each kind. */
  public static BenchComparison of(BenchResults results) {
    List<SetupSide> sides =
        results.bench().setups().stream()
            .map(setup -> side(results.bench(), results.outcomes(), setup))
            .toList();
    return new BenchComparison(results, sides);
  }

  private static SetupSide side(Bench bench, List<Outcome> outcomes, Setup setup) {
    SetupResults latest = SetupResults.latest(setup.name(), of(outcomes, setup.name()));
    List<Inspection> inspections = inspections(bench, outcomes, setup.spindle());
    Standing standing = Standing.of(inspections);
    List<Saying> because =
        standing == Standing.HELD ? Standing.last(inspections).because() : List.of();
    OptionalDouble none = OptionalDouble.empty();
    Set<Saying> cautions = new LinkedHashSet<>(SetupCautions.of(bench, setup, none, none));
    for (Reduced one : latest.results()) {
      if (!(one instanceof Inspection)) {
        cautions.addAll(one.cautions());
      }
    }
    Trait.ALL.forEach(trait -> cautions.addAll(ofEarlier(trait, latest)));
    List<NormVerdict> verdicts = Norms.latest(of(outcomes, setup.name()));
    cautions.addAll(Norms.disproven(verdicts));
    return new SetupSide(setup, latest, standing, because, verdicts, List.copyOf(cautions));
  }

  /** What an earlier trial says of the figure that is taken from it. */
  private static List<Saying> ofEarlier(Trait trait, SetupResults latest) {
    String first = trait.path().split("\\.", -1)[0];
    return trait.earlier(latest).stream()
        .flatMap(result -> result.cautions().stream())
        .filter(saying -> saying.about().startsWith(first))
        .toList();
  }

  private static List<Reduced> of(List<Outcome> outcomes, String setup) {
    List<Reduced> all = new ArrayList<>();
    for (Outcome outcome : outcomes) {
      if (outcome instanceof Outcome.Figures figures
          && outcome.setup().filter(setup::equals).isPresent()) {
        all.add(figures.reduced());
      }
    }
    return all;
  }

  /** Inspections taken on any setup of the spindle. */
  private static List<Inspection> inspections(Bench bench, List<Outcome> outcomes, String spindle) {
    List<Inspection> all = new ArrayList<>();
    for (Setup setup : bench.setups()) {
      if (setup.spindle().equals(spindle)) {
        of(outcomes, setup.name()).stream()
            .filter(Inspection.class::isInstance)
            .map(Inspection.class::cast)
            .forEach(all::add);
      }
    }
    return all;
  }

  /** What must be looked at first: spindles on hold or not inspected, and trials refused. */
  public List<Saying> cautions() {
    Set<Saying> cautions = new LinkedHashSet<>();
    for (Standing standing : List.of(Standing.HELD, Standing.NOT_INSPECTED)) {
      for (SetupSide side : setups) {
        if (side.standing() == standing) {
          String spindle = side.setup().spindle();
          cautions.add(Saying.of("spindle-" + standing.code(), spindle, Arg.of(spindle)));
        }
      }
    }
    for (Outcome outcome : results.outcomes()) {
      if (outcome instanceof Outcome.Unusable unusable) {
        String file = unusable.trial().file();
        cautions.add(Saying.of("trial-refused", file, Arg.of(file)));
      }
    }
    return List.copyOf(cautions);
  }

  /** Whether a trial was refused, so that its figures are missing here. */
  public boolean lacksTrials() {
    return results.outcomes().stream().anyMatch(Outcome.Unusable.class::isInstance);
  }

  /** Whether anything must be looked at. */
  public boolean hasCautions() {
    return !cautions().isEmpty() || setups.stream().anyMatch(side -> !side.cautions().isEmpty());
  }
}
