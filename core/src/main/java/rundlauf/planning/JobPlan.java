package rundlauf.planning;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Job;
import rundlauf.quantity.Saying;

/**
 * A job planned on every setup of a bench.
 *
 * @param setups best first: inspected before not inspected before held, feasible before not
 * @param cautions of the whole, such as that chatter was not examined
 * @param advice what would help when none will do
 */
public record JobPlan(Job job, List<SetupPlan> setups, List<Saying> cautions, List<Saying> advice) {
  public JobPlan {
    setups = List.copyOf(setups);
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  /** How one of its setups stands to the others; empty where it is not recommended. */
  public Optional<Rank> rank(SetupPlan one) {
    return Rank.of(one, setups);
  }

  /** Whether a setup that is inspected and not held will do it. */
  public boolean possible() {
    return setups.stream().anyMatch(SetupPlan::recommended);
  }
}
