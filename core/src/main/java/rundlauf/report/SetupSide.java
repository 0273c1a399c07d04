package rundlauf.report;

import java.util.List;
import rundlauf.bench.Setup;
import rundlauf.compare.SetupResults;
import rundlauf.quantity.Saying;
import rundlauf.reduce.NormVerdict;
import rundlauf.safety.Standing;

/**
 * One setup of a side-by-side.
 *
 * @param latest its latest result of each kind
 * @param standing whether its spindle may be powered
 * @param because why it is held; empty when it is not
 * @param verdicts of the norms that speak of it, each by the latest trial that decides it
 * @param cautions of the setup itself and of its latest results, each once
 */
public record SetupSide(
    Setup setup,
    SetupResults latest,
    Standing standing,
    List<Saying> because,
    List<NormVerdict> verdicts,
    List<Saying> cautions) {
  public SetupSide {
    because = List.copyOf(because);
    verdicts = List.copyOf(verdicts);
    cautions = List.copyOf(cautions);
  }
}
