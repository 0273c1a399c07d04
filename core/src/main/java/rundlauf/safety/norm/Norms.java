package rundlauf.safety.norm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.bench.Spindle;
import rundlauf.quantity.Saying;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.NormVerdict.Outcome;
import rundlauf.reduce.runout.Runout;

/** What the norms say to a runout trial on a setup of a bench. */
public final class Norms {
  private Norms() {}

  /** The trial with its verdicts, each that is disproven a caution too. */
  public static Runout judged(Bench bench, Setup setup, Runout runout, OptionalDouble pin) {
    List<NormVerdict> verdicts = of(bench, setup, runout, pin);
    List<Saying> cautions =
        verdicts.stream()
            .filter(verdict -> verdict.outcome() == Outcome.DISPROVEN)
            .map(verdict -> verdict.said().get(0))
            .toList();
    return runout.withVerdicts(verdicts).withCautions(cautions);
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
