package rundlauf.render.plain;

import java.util.stream.Collectors;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Pair;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Shown;

/** One figure of two setups in a sentence: how much they differ, with which odds, and if fairly. */
final class PairText {
  private PairText() {}

  static String of(Sheet sheet, Pair pair, Difference one) {
    double aSmaller = one.aSmaller().orElseThrow();
    boolean aFirst = aSmaller >= 0.5;
    String smaller = aFirst ? pair.a() : pair.b();
    String larger = aFirst ? pair.b() : pair.a();
    var shown = Shown.of(one.difference()).orElseThrow();
    Arg by = Arg.of(FigureText.of(aFirst ? shown.negated() : shown));
    Arg odds = Arg.of(odds(Math.max(aSmaller, 1 - aSmaller)));
    return switch (one.verdict()) {
      case BETTER ->
          one.better().filter(smaller::equals).isPresent()
              ? sheet.word("pair-better-less", Arg.of(smaller), Arg.of(larger), by, odds)
              : sheet.word("pair-better-more", Arg.of(larger), Arg.of(smaller), by, odds);
      case NOT_FAIR ->
          sheet.word(
              "pair-not-fair", Arg.of(smaller), Arg.of(larger), by, odds, Arg.of(differing(one)));
      default -> sheet.word("pair-less", Arg.of(smaller), Arg.of(larger), by, odds);
    };
  }

  /** What differs besides the setup, each named once. */
  private static String differing(Difference one) {
    return one.because().stream()
        .map(Saying::about)
        .map(name -> name.replace('-', ' '))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Odds in a hundred, never claimed to be all of them. */
  static String odds(double probability) {
    double hundred = 100 * probability;
    if (hundred > 99.9) {
      return "99.9";
    }
    return hundred > 99
        ? Double.toString(Math.floor(10 * hundred) / 10)
        : Long.toString((long) Math.floor(hundred));
  }
}
