package rundlauf.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.compare.Trait.Good;
import rundlauf.maths.Draws;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.runout.Runout;

/** Sets setups side by side. */
public final class Comparing {
  /**
   * What the odds must reach for a verdict, so that 0 lies outside the 95 % interval of the
   * difference: either of two equal setups may come out the better, each one time in forty.
   */
  private static final double PROVEN = 0.975;

  /** Codes of cautions that make a figure another one than its name says. */
  private static final List<String> ANOTHER_FIGURE =
      List.of("side-load-secant", "side-load-play-lower-bound");

  private static final List<String> PLAYS = List.of("play", "endPlay");

  private static final double SAME_STATION = 1e-4;

  private static final String STATION_TIR = "stations.tir";

  /** Every trait, and the stations that both were read at after what one clamping gives. */
  private static final List<Trait> TRAITS = traits();

  private static List<Trait> traits() {
    List<Trait> all = new ArrayList<>(Trait.ALL);
    all.add(5, new Trait("runout", STATION_TIR, Unit.MICROMETRE, Good.SMALLER));
    return List.copyOf(all);
  }

  private Comparing() {}

  /**
   * Differences of every pair of setups.
   *
   * @param setups with results reduced with the same {@code draws}, so that common causes cancel
   * @param draws count and seed
   * @return for each pair and each figure that either has: a − b [SI] by draws, the probability
   *     that a's is smaller, and "better" only where one of the two has odds of at least 97.5 % and
   *     nothing but the setups differs
   * @see "docs/methods/compare.md"
   */
  public static Comparison compare(List<SetupResults> setups, Draws draws) {
    List<Comparison.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < setups.size(); i++) {
      for (int j = i + 1; j < setups.size(); j++) {
        pairs.add(pair(setups.get(i), setups.get(j), draws));
      }
    }
    return new Comparison(setups.stream().map(SetupResults::name).toList(), pairs);
  }

  private static Comparison.Pair pair(SetupResults a, SetupResults b, Draws draws) {
    List<Difference> differences = new ArrayList<>();
    for (Trait one : TRAITS) {
      Optional<Side> first = side(a, one);
      Optional<Side> second = side(b, one);
      if (first.isPresent() && second.isPresent()) {
        for (Both both : both(one, first.get().result(), second.get().result())) {
          differences.add(difference(one, both, first.get(), second.get(), draws));
        }
      }
    }
    return new Comparison.Pair(a.name(), b.name(), differences);
  }

  /** One setup's result that is compared. */
  private record Side(String name, Reduced result) {}

  private static Optional<Side> side(SetupResults setup, Trait one) {
    Optional<Reduced> told =
        one.path().equals(STATION_TIR) ? setup.of(one.kind()) : one.result(setup);
    return told.map(result -> new Side(setup.name(), result));
  }

  /** A figure of both setups, at a station where it has one. */
  private record Both(OptionalDouble station, Figure a, Figure b) {}

  private static List<Both> both(Trait one, Reduced a, Reduced b) {
    if (one.path().equals(STATION_TIR)) {
      return stations((Runout) a, (Runout) b);
    }
    Figure ofA = one.in(a);
    Figure ofB = one.in(b);
    return !(ofA.known() || ofB.known())
        ? List.of()
        : List.of(new Both(OptionalDouble.empty(), ofA, ofB));
  }

  /** The first sweep of each station that both were read at. */
  private static List<Both> stations(Runout a, Runout b) {
    List<Both> all = new ArrayList<>();
    List<Double> seen = new ArrayList<>();
    for (Runout.Station station : a.stations()) {
      OptionalDouble at = station.sweep().station();
      if (at.isEmpty() || seen.stream().anyMatch(s -> near(s, at.getAsDouble()))) {
        continue;
      }
      seen.add(at.getAsDouble());
      b.stations().stream()
          .filter(s -> s.sweep().station().isPresent())
          .filter(s -> near(s.sweep().station().getAsDouble(), at.getAsDouble()))
          .findFirst()
          .ifPresent(s -> all.add(new Both(at, station.tir(), s.tir())));
    }
    return all;
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= SAME_STATION;
  }

  private static Difference difference(Trait one, Both both, Side a, Side b, Draws draws) {
    List<Condition> conditions = Fairness.of(a.result(), b.result(), one.path());
    List<Saying> because = new ArrayList<>(Fairness.differing(conditions));
    because.addAll(anotherFigure(one, a.result()));
    because.addAll(anotherFigure(one, b.result()));
    if (one.path().equals(NamedFigure.ASYNCHRONOUS)) {
      because.add(Saying.of("compare-turns-read", "turns-read"));
    }
    Figure difference = less(both.a(), both.b(), draws);
    OptionalDouble smaller =
        difference instanceof Drawn d ? OptionalDouble.of(smaller(d)) : OptionalDouble.empty();
    Verdict verdict = verdict(one.good(), smaller, because.isEmpty());
    return new Difference(
        one.kind(),
        one.path(),
        both.station(),
        both.a(),
        both.b(),
        difference,
        smaller,
        verdict,
        named(verdict, one.good(), smaller, a.name(), b.name()),
        a.result().head().file(),
        b.result().head().file(),
        because,
        Fairness.unsaid(conditions));
  }

  private static List<Saying> anotherFigure(Trait one, Reduced result) {
    return result.cautions().stream()
        .filter(s -> ANOTHER_FIGURE.contains(s.code()))
        .filter(s -> PLAYS.contains(s.about()) == PLAYS.contains(one.path()))
        .toList();
  }

  private static Figure less(Figure a, Figure b, Draws draws) {
    if (a instanceof Missing missing) {
      return missing;
    }
    return b instanceof Missing missing
        ? missing
        : Drawn.through(v -> v[0] - v[1], a.unit(), draws, a, b);
  }

  /** Draws on which neither is smaller count half for each. */
  private static double smaller(Drawn difference) {
    double over = difference.probabilityOver(0);
    double even = difference.probabilityOver(-Double.MIN_VALUE) - over;
    return 1 - over - even / 2;
  }

  private static Verdict verdict(Good good, OptionalDouble smaller, boolean fair) {
    if (smaller.isEmpty()) {
      return Verdict.MISSING;
    }
    if (!fair) {
      return Verdict.NOT_FAIR;
    }
    double odds = Math.max(smaller.getAsDouble(), 1 - smaller.getAsDouble());
    if (odds < PROVEN) {
      return Verdict.NOT_PROVEN;
    }
    return good == Good.NEITHER ? Verdict.SMALLER : Verdict.BETTER;
  }

  private static Optional<String> named(
      Verdict verdict, Good good, OptionalDouble smaller, String a, String b) {
    boolean aSmaller = smaller.orElse(0) > 0.5;
    return switch (verdict) {
      case BETTER -> Optional.of(aSmaller == (good == Good.SMALLER) ? a : b);
      case SMALLER -> Optional.of(aSmaller ? a : b);
      case NOT_PROVEN, NOT_FAIR, MISSING -> Optional.empty();
    };
  }
}
