package rundlauf.render.plain;

import java.util.List;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Pair;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Shown;
import rundlauf.render.Sentences;

/** One figure of two setups in a sentence: how much they differ, with which odds, and if fairly. */
final class PairText {
  private PairText() {}

  static void write(Sheet sheet, Pair pair, Difference one) {
    double aSmaller = one.aSmaller().orElseThrow();
    boolean first = aSmaller >= 0.5;
    String smaller = first ? pair.a() : pair.b();
    String larger = first ? pair.b() : pair.a();
    var shown = Shown.of(one.difference()).orElseThrow();
    String by = FigureText.of(first ? shown.negated() : shown);
    Arg odds = Arg.of(odds(Math.max(aSmaller, 1 - aSmaller)));
    String says =
        sheet.word(
            "pair-" + one.verdict().code(),
            Arg.of(smaller),
            Arg.of(larger),
            Arg.of(by),
            odds,
            Arg.of(one.better().orElse("")));
    List<String> because = one.because().stream().map(Sentences::text).toList();
    sheet.bullet(because.isEmpty() ? says : says + " " + String.join(" ", because));
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
