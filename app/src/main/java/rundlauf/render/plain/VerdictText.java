package rundlauf.render.plain;

import java.util.List;
import java.util.stream.Collectors;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.reduce.NormVerdict;
import rundlauf.render.Sentences;

/** What norms say, as plain text. */
final class VerdictText {
  private VerdictText() {}

  /** Under a heading of its own; nothing where no norm speaks. */
  static void write(Sheet sheet, List<NormVerdict> verdicts) {
    if (verdicts.isEmpty()) {
      return;
    }
    sheet.heading("heading-norms");
    verdicts.forEach(verdict -> sheet.bullet(words(sheet, verdict)));
  }

  /** The figure and its limit where there are both, then the verdict in words. */
  static String words(Sheet sheet, NormVerdict verdict) {
    String said = verdict.said().stream().map(Sentences::text).collect(Collectors.joining(" "));
    if (!verdict.figure().known()) {
      return sheet.word("norm-undecided", Arg.of(verdict.about()), Arg.of(verdict.norm()))
          + " "
          + said;
    }
    var limit = verdict.limit();
    return sheet.word(
            "norm-figure",
            Arg.of(sheet.value(verdict.figure())),
            Arg.of(Format.about(limit.value(), limit.unit())))
        + " "
        + said;
  }
}
