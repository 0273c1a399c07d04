package rundlauf.store;

import java.util.List;
import rundlauf.usecase.BenchStore;
import rundlauf.usecase.TrialName;
import rundlauf.usecase.TypedReading;
import rundlauf.usecase.TypedReading.Cell;

/** Invented readings of an invented workshop. */
final class Invented {
  static final TrialName TRIAL = new TrialName("The inlay corner", "heron-er11.yaml");

  private Invented() {}

  /** Keeps the bench and the trial. */
  static void begin(BenchStore store) {
    store.keepBench(TRIAL.bench(), "bench: The inlay corner\n");
    store.keepTrial(TRIAL, "trial: runout\n");
  }

  static TypedReading reading(String key, String angle, String reading) {
    return new TypedReading(
        key, List.of(new Cell("angle_deg", angle), new Cell("reading_um", reading)));
  }
}
