package rundlauf.safety.norm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.bench.Spindle;
import rundlauf.quantity.Saying;
import rundlauf.reduce.Latest;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.NormVerdict.Outcome;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.runout.Runout;

/** What the norms say to a runout trial on a setup of a bench. */
public final class Norms {
  private Norms() {}

  /** The trial with its verdicts, each that is disproven a caution too. */
  public static Runout judged(Bench bench, Setup setup, Runout runout, OptionalDouble pin) {
    List<NormVerdict> verdicts = of(bench, setup, runout, pin);
    return runout.withVerdicts(verdicts).withCautions(disproven(verdicts));
  }

  /** What is said of each that is disproven. */
  public static List<Saying> disproven(List<NormVerdict> verdicts) {
    return verdicts.stream()
        .filter(verdict -> verdict.outcome() == Outcome.DISPROVEN)
        .map(verdict -> verdict.said().get(0))
        .toList();
  }

  /**
   * The verdicts that count of several trials on one setup: of each norm the latest that is
   * decided, else the latest.
   *
   * @param results in the order of their files; those without verdicts are passed over
   * @return in the order in which the norms are first met
   */
  public static List<NormVerdict> latest(List<? extends Reduced> results) {
    Map<List<String>, NormVerdict> counting = new LinkedHashMap<>();
    for (Reduced result : Latest.inOrder(results)) {
      if (result instanceof Runout runout) {
        for (NormVerdict verdict : runout.verdicts()) {
          counting.merge(List.of(verdict.norm(), verdict.about()), verdict, Norms::counting);
        }
      }
    }
    return List.copyOf(counting.values());
  }

  private static NormVerdict counting(NormVerdict before, NormVerdict next) {
    boolean lost = next.outcome() == Outcome.NOT_DECIDED && before.outcome() != Outcome.NOT_DECIDED;
    return lost ? before : next;
  }

  /**
   * The verdicts.
   *
   * @param pin diameter of the body touched [m]; empty when it is not given
   * @return of the collet where the holder is one, then of the balance where the setup has a
   *     cutter; none for what no norm speaks of
   * @see "docs/methods/norms.md"
   */
  public static List<NormVerdict> of(Bench bench, Setup setup, Runout runout, OptionalDouble pin) {
    List<NormVerdict> verdicts = new ArrayList<>();
    setup
        .holder()
        .flatMap(bench::holder)
        .flatMap(holder -> ColletRunout.of(holder, runout, pin))
        .ifPresent(verdicts::add);
    Optional<Spindle> spindle = bench.spindle(setup.spindle());
    setup
        .cutter()
        .flatMap(bench::cutter)
        .ifPresent(c -> spindle.ifPresent(s -> verdicts.add(ToolBalance.of(s, setup, c, runout))));
    return verdicts;
  }
}
