package rundlauf.compare;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;

/**
 * Every pair of setups, figure by figure.
 *
 * @param setups names in the order given
 * @param pairs each setup with each that follows it
 */
public record Comparison(List<String> setups, List<Pair> pairs) {
  public Comparison {
    setups = List.copyOf(setups);
    pairs = List.copyOf(pairs);
  }

  /** Two setups. */
  public record Pair(String a, String b, List<Difference> differences) {
    public Pair {
      differences = List.copyOf(differences);
    }
  }

  /**
   * One figure of two setups.
   *
   * @param kind of trial it came from
   * @param figure its path, as in the results; {@code stations.tir} for a station both were read at
   * @param station distance from the nut's face [m], for {@code stations.tir}
   * @param ofA the figure of setup a
   * @param ofB that of setup b
   * @param difference a − b with its interval; what both share cancels. Missing where one is
   * @param aSmaller probability that a's is the smaller, where both are known
   * @param verdict what may be said
   * @param better the setup that the verdict speaks of, for {@code BETTER} and {@code SMALLER}
   * @param aFile trial that a's figure is of
   * @param bFile trial that b's is of
   * @param because what stands against comparing them; empty when the comparison is fair
   * @param unsaid conditions that neither trial states, so that they were taken as the same
   */
  public record Difference(
      String kind,
      String figure,
      OptionalDouble station,
      Figure ofA,
      Figure ofB,
      Figure difference,
      OptionalDouble aSmaller,
      Verdict verdict,
      Optional<String> better,
      String aFile,
      String bFile,
      List<Saying> because,
      List<Saying> unsaid) {
    public Difference {
      because = List.copyOf(because);
      unsaid = List.copyOf(unsaid);
    }

    public boolean fair() {
      return because.isEmpty();
    }
  }

  /** What may be said of two figures. */
  public enum Verdict {
    /** One is better: 0 lies outside the 95 % interval, and the comparison is fair. */
    BETTER,
    /** One is smaller as surely; of this figure neither smaller nor larger is better. */
    SMALLER,
    /** The comparison is fair and the odds do not bear a verdict. */
    NOT_PROVEN,
    /** Something other than the setups differs. */
    NOT_FAIR,
    /** One of the figures cannot be had. */
    MISSING;

    /** As written in files: {@code better}, {@code not-proven}, … */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
