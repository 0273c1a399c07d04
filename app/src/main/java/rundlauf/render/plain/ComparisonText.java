package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rundlauf.compare.Comparison;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.compare.Trait;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.reduce.NormVerdict;
import rundlauf.render.Sentences;
import rundlauf.report.BenchComparison;
import rundlauf.report.SetupSide;

/** A bench's setups side by side as plain text: cautions, then figure by figure. */
public final class ComparisonText {
  /** What is shown whether it is known or not. Our choice: what a cut feels. */
  private static final List<String> SHOWN =
      List.of("nextClamping.tir", "axis.tip.tir", "stiffness", "play", "usable.min", "usable.max");

  /** What is shown where a setup knows it; the document has the rest. */
  private static final List<String> BESIDES =
      List.of(
          "bestClocking.tir",
          "parts.spindle.eccentricity",
          "parts.collet.eccentricity",
          "parts.shank.eccentricity",
          "directions.soft.stiffness",
          "directions.stiff.stiffness",
          "shares.collet.compliance",
          "shares.bearings.compliance",
          "shares.mount.compliance",
          "shares.frame.compliance",
          "endPlay",
          "axialStiffness",
          "growth",
          "settledAfter");

  /** A pair of which one figure is missing is not told of: the rows say so. */
  private static final List<Verdict> TOLD =
      List.of(Verdict.BETTER, Verdict.SMALLER, Verdict.NOT_PROVEN, Verdict.NOT_FAIR);

  /** Reasons of a hold that are no finding. */
  private static final List<String> UNSEEN = List.of("inspection-unchecked", "inspection-absent");

  private ComparisonText() {}

  /** The page, each line ended, at most 80 columns where words can be parted. */
  public static String of(BenchComparison found) {
    var sheet = new Sheet(List.of());
    sheet.paragraph(
        sheet.word(
            "compare-title",
            Arg.of(found.results().bench().name()),
            Arg.of(found.setups().size())));
    sheet.paragraph(sheet.word("range-meaning"));
    sheet.paragraph(sheet.word("compare-no-ranking"));
    cautions(sheet, found);
    for (Trait trait : Trait.ALL) {
      if (SHOWN.contains(trait.path()) || (BESIDES.contains(trait.path()) && known(found, trait))) {
        trait(sheet, found, trait);
      }
    }
    norms(sheet, found);
    return sheet.text();
  }

  private static boolean known(BenchComparison found, Trait trait) {
    return found.setups().stream().anyMatch(side -> trait.of(side.latest()).known());
  }

  /** What norms say of each setup; nothing where none speaks. */
  private static void norms(Sheet sheet, BenchComparison found) {
    if (found.setups().stream().allMatch(side -> side.verdicts().isEmpty())) {
      return;
    }
    sheet.heading("heading-norms");
    Map<String, Set<String>> undecided = new LinkedHashMap<>();
    for (SetupSide side : found.setups()) {
      for (NormVerdict verdict : side.verdicts()) {
        if (verdict.figure().known()) {
          sheet.bullet(side.setup().name() + ": " + VerdictText.words(sheet, verdict));
        } else {
          undecided
              .computeIfAbsent(verdict.norm(), norm -> new LinkedHashSet<>())
              .add(side.setup().name());
        }
      }
    }
    undecided.forEach(
        (norm, setups) ->
            sheet.bullet(
                sheet.word("norms-undecided", Arg.of(norm), Arg.list(List.copyOf(setups)))));
  }

  private static void cautions(Sheet sheet, BenchComparison found) {
    if (!found.hasCautions()) {
      return;
    }
    sheet.heading("heading-cautions");
    found.cautions().forEach(caution -> sheet.bullet(Sentences.text(caution)));
    held(sheet, found);
    for (SetupSide side : found.setups()) {
      side.cautions().forEach(saying -> own(sheet, side, saying));
    }
  }

  /** Why each held spindle is held: what was found; what was not looked at is only counted. */
  private static void held(Sheet sheet, BenchComparison found) {
    Set<String> told = new LinkedHashSet<>();
    for (SetupSide side : found.setups()) {
      String spindle = side.setup().spindle();
      if (side.because().isEmpty() || !told.add(spindle)) {
        continue;
      }
      List<Saying> seen = side.because().stream().filter(s -> !UNSEEN.contains(s.code())).toList();
      seen.forEach(saying -> sheet.bullet(spindle + ": " + Sentences.text(saying)));
      int unseen = side.because().size() - seen.size();
      if (unseen > 0) {
        sheet.bullet(sheet.word("held-unseen", Arg.of(spindle), Arg.of(unseen)));
      }
    }
  }

  private static void own(Sheet sheet, SetupSide side, Saying saying) {
    sheet.bullet(side.setup().name() + ": " + Sentences.text(saying));
  }

  private static void trait(Sheet sheet, BenchComparison found, Trait trait) {
    sheet.heading("trait-" + trait.path());
    List<String> unmeasured = new ArrayList<>();
    for (SetupSide side : found.setups()) {
      Figure figure = trait.of(side.latest());
      if (figure instanceof Missing) {
        unmeasured.add(side.setup().name());
      } else {
        sheet.row(side.setup().name(), sheet.value(figure) + earlier(sheet, side, trait));
      }
    }
    if (!unmeasured.isEmpty() && SHOWN.contains(trait.path())) {
      sheet.row(sheet.word("not-known-of"), String.join(", ", unmeasured));
    }
    for (Verdict verdict : TOLD) {
      pairs(sheet, found.results().comparison(), trait, verdict);
    }
  }

  /** The trial, where a later one of its kind does not tell the figure. */
  private static String earlier(Sheet sheet, SetupSide side, Trait trait) {
    return trait
        .earlier(side.latest())
        .map(result -> sheet.word("of-earlier-trial", Arg.of(result.head().name())))
        .orElse("");
  }

  /** The pairs of one verdict, under its name; nothing when there are none. */
  private static void pairs(Sheet sheet, Comparison comparison, Trait trait, Verdict verdict) {
    List<String> lines = new ArrayList<>();
    for (Comparison.Pair pair : comparison.pairs()) {
      for (Comparison.Difference one : pair.differences()) {
        if (one.figure().equals(trait.path()) && one.verdict() == verdict) {
          lines.add(PairText.of(sheet, pair, one));
        }
      }
    }
    if (!lines.isEmpty()) {
      sheet.line("  " + sheet.word("verdict-" + verdict.code()));
      lines.forEach(sheet::bullet);
    }
  }
}
