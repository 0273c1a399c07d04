package rundlauf.report;

import java.util.Optional;
import rundlauf.bench.Trial;
import rundlauf.quantity.Refused;
import rundlauf.reduce.Reduced;

/** A trial as it was typed, and what came of it: figures, or the reason why there are none. */
public sealed interface Outcome {
  Trial trial();

  /** The bench's name of what was measured; empty when the trial names none. */
  Optional<String> setup();

  /** The trial bore figures. */
  record Figures(Trial trial, Reduced reduced) implements Outcome {
    @Override
    public Optional<String> setup() {
      return reduced.head().setup();
    }
  }

  /** The trial was refused. */
  record Unusable(Trial trial, Optional<String> setup, Refused refused) implements Outcome {}
}
