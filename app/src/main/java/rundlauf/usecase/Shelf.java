package rundlauf.usecase;

import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * Benches and trials by number: from 1, in the order in which they came to the store, so that a
 * number stays what it was.
 */
public final class Shelf {
  private final BenchStore benches;

  public Shelf(BenchStore benches) {
    this.benches = benches;
  }

  /** A trial, with both of its numbers. */
  public record Placed(int bench, int trial, TrialName name) {}

  /** The names of all benches. */
  public List<String> benches() {
    return benches.benches();
  }

  /**
   * The name of a bench.
   *
   * @throws Refused when there is none of that number
   */
  public String bench(int number) {
    List<String> names = benches.benches();
    if (number < 1 || number > names.size()) {
      throw Refused.at(Place.NOWHERE, "bench-not-there", Arg.typed(Integer.toString(number)));
    }
    return names.get(number - 1);
  }

  /** The names of a bench's trials. */
  public List<String> trials(int bench) {
    return benches.trials(bench(bench));
  }

  /**
   * A trial.
   *
   * @throws Refused when there is none of that number
   */
  public Placed trial(int bench, int number) {
    String name = bench(bench);
    List<String> trials = benches.trials(name);
    if (number < 1 || number > trials.size()) {
      throw Refused.at(Place.NOWHERE, "trial-not-kept-there", Arg.typed(Integer.toString(number)));
    }
    return new Placed(bench, number, new TrialName(name, trials.get(number - 1)));
  }
}
