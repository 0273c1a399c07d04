package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.quantity.Saying;

/** What a bench lacks before its first trial can be taken. */
public final class FirstTrial {
  private FirstTrial() {}

  /** A saying, about its section, for each kind of part that is wanted and not there. */
  public static List<Saying> missing(Bench bench) {
    List<Saying> missing = new ArrayList<>();
    if (bench.spindles().isEmpty()) {
      missing.add(Saying.of("first-trial-spindle", "spindles"));
    }
    if (bench.setups().isEmpty()) {
      missing.add(Saying.of("first-trial-setup", "setups"));
    }
    if (bench.indicators().isEmpty()) {
      missing.add(Saying.of("first-trial-dial", "indicators"));
    }
    if (bench.rigs().isEmpty()) {
      missing.add(Saying.of("first-trial-rig", "rigs"));
    }
    return List.copyOf(missing);
  }
}
