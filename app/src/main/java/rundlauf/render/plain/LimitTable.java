package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** What a cut may not pass: a line for every limit judged, then those that cannot be. */
final class LimitTable {
  private LimitTable() {}

  /** Every limit of a cut, and all judged ones together. */
  static void write(Sheet sheet, Prediction found) {
    sheet.heading("heading-limits");
    table(sheet, found.limits());
    together(sheet, found);
  }

  /** Judged limits as a table, the others by their reasons. */
  static void table(Sheet sheet, List<Limit> limits) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "",
            sheet.word("limit-column-value"),
            sheet.word("limit-column-allowed"),
            sheet.word("limit-column-kept")));
    limits.stream().filter(Limit::judged).forEach(limit -> rows.add(row(sheet, limit)));
    if (rows.size() > 1) {
      sheet.table(rows);
    }
    if (limits.stream().anyMatch(limit -> limit.judged() && !limit.assumed().isEmpty())) {
      sheet.line("  " + sheet.word("limit-assumed"));
    }
    Map<Saying, List<String>> others = new LinkedHashMap<>();
    limits.stream()
        .filter(limit -> !limit.judged())
        .forEach(
            limit ->
                others
                    .computeIfAbsent(limit.why(), w -> new ArrayList<>())
                    .add(name(sheet, limit)));
    others.forEach((why, names) -> sheet.missing(names, "limit-not-judged", why));
  }

  private static List<String> row(Sheet sheet, Limit limit) {
    String kept = kept(sheet, limit.probability().orElseThrow());
    return List.of(
        name(sheet, limit),
        marked(sheet, CutWords.alone(limit.value()), limit.assumedOfValue()),
        marked(sheet, allowed(sheet, limit), limit.assumedOfAllowed()),
        limit.holds() ? kept : sheet.word("limit-row-fails", Arg.of(kept)));
  }

  private static String allowed(Sheet sheet, Limit limit) {
    Arg value = Arg.of(CutWords.alone(limit.allowed()));
    return sheet.word(limit.atLeast() ? "limit-at-least" : "limit-at-most", value);
  }

  private static String marked(Sheet sheet, String amount, List<Saying> assumed) {
    return assumed.isEmpty() ? amount : amount + " " + sheet.word("mark-assumed-short");
  }

  private static String name(Sheet sheet, Limit limit) {
    return sheet.word("term.limit-" + limit.code());
  }

  /** The odds that all judged limits hold. */
  private static void together(Sheet sheet, Prediction found) {
    long judged = found.limits().stream().filter(Limit::judged).count();
    sheet.paragraph(
        sheet.word(
            "limits-together",
            Arg.of(judged),
            odds(sheet, found.probability()),
            Arg.of(Math.round(100 * Limit.ASKED))));
    if (judged > 0) {
      sheet.paragraph(sheet.word("limits-without-chatter"));
    }
  }

  /** Such as {@code 97 times in 100}. */
  static Arg odds(Sheet sheet, double probability) {
    if (over(probability)) {
      return Arg.of(sheet.word("odds-times-over"));
    }
    return Arg.of(
        under(probability)
            ? sheet.word("odds-times-under")
            : sheet.word("odds-times", Arg.of(hundredths(probability))));
  }

  private static String kept(Sheet sheet, double probability) {
    if (over(probability)) {
      return sheet.word("odds-over");
    }
    return under(probability) ? sheet.word("odds-under") : hundredths(probability);
  }

  private static String hundredths(double probability) {
    return Long.toString((long) Math.floor(100 * probability));
  }

  /** So few draws cannot tell 99 in 100 from certainty. */
  private static boolean over(double probability) {
    return probability > 0.99;
  }

  private static boolean under(double probability) {
    return probability < 0.01;
  }
}
