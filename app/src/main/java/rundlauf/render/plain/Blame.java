package rundlauf.render.plain;

import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;

/** What limits a figure: its largest causes of doubt, each with its share of the whole. */
final class Blame {
  private static final int MOST = 4;

  /** Smaller shares are not named; our choice: they cannot be felt in the interval. */
  private static final double LEAST_SHARE = 0.03;

  private Blame() {}

  /** A heading with the figure's name and a line for each cause; nothing for an exact figure. */
  static void write(Sheet sheet, String figureName, Figure figure, String trial) {
    double squares = figure.budget().stream().mapToDouble(s -> s.u() * s.u()).sum();
    if (squares == 0) {
      return;
    }
    sheet.heading("heading-blame", Arg.of(figureName));
    figure.budget().stream()
        .limit(MOST)
        .filter(share -> share.u() * share.u() >= LEAST_SHARE * squares)
        .forEach(
            share -> {
              long percent = Math.round(100 * share.u() * share.u() / squares);
              var cause = share.cause();
              String words = sheet.word("blame-share", Arg.of(percent), Arg.term(cause.part()));
              sheet.bullet(words + belonging(cause.record(), trial));
            });
  }

  /** Whose cause it is, in brackets, without what the page says already. */
  private static String belonging(String record, String trial) {
    String own = record.replace(" on " + trial, ",").replace(trial, "");
    String name = own.replaceFirst("^[a-z ]*/", "").replaceFirst("^[, ]+", "").strip();
    return name.isEmpty() ? "" : " (" + name + ")";
  }
}
