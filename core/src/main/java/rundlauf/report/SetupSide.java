package rundlauf.report;

import java.util.List;
import java.util.stream.Stream;
import rundlauf.bench.Setup;
import rundlauf.compare.SetupResults;
import rundlauf.quantity.Saying;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.runout.Runout;
import rundlauf.safety.Standing;

/**
 * One setup of a side-by-side.
 *
 * @param latest its latest result of each kind
 * @param standing whether its spindle may be powered
 * @param because why it is held; empty when it is not
 * @param cautions of the setup itself and of its latest results, each once
 */
public record SetupSide(
    Setup setup,
    SetupResults latest,
    Standing standing,
    List<Saying> because,
    List<Saying> cautions) {
  /** What norms say to its latest runout trial. */
  public List<NormVerdict> verdicts() {
    return latest.results().stream()
        .flatMap(one -> one instanceof Runout runout ? runout.verdicts().stream() : Stream.empty())
        .toList();
  }

  public SetupSide {
    because = List.copyOf(because);
    cautions = List.copyOf(cautions);
  }
}
