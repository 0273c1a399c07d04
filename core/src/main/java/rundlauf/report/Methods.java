package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.reduce.runout.Runout;

/** How the figures of each kind of trial were made, in short, with the page that tells it all. */
final class Methods {
  private static final String SECTION = "methods";

  /** The id of how setups are compared. */
  static final String COMPARE = "method-compare";

  private Methods() {}

  static String id(String kind) {
    return "method-" + kind;
  }

  /**
   * What is said of every kind of trial, and of what else the report tells.
   *
   * @param planned whether jobs are planned in it
   */
  static Section section(List<Sheet> sheets, boolean planned) {
    Set<String> kinds = new LinkedHashSet<>();
    sheets.forEach(s -> s.reducedKind().ifPresent(kind -> kinds.add(kind.word())));
    if (sheets.stream().anyMatch(Methods::judged)) {
      kinds.add("norms");
    }
    kinds.add("compare");
    if (planned) {
      kinds.addAll(List.of("character", "predict", "plan"));
    }
    List<Section> parts = new ArrayList<>();
    for (String kind : kinds) {
      List<Saying> sayings =
          List.of(
              Saying.of("report-method-" + kind, ""),
              Saying.of("report-method-page", "", Arg.of("docs/methods/" + kind + ".md")));
      Saying heading = Saying.of("report-kind-" + kind, "");
      parts.add(Section.of(id(kind), heading, List.of(Remarks.of(Remarks.Tone.NOTE, sayings))));
    }
    Block intro = Remarks.of(Remarks.Tone.NOTE, List.of(Saying.of("report-methods-intro", "")));
    return new Section(SECTION, Saying.of("report-methods", ""), List.of(intro), parts);
  }

  private static boolean judged(Sheet sheet) {
    return sheet
        .reduced()
        .filter(r -> r instanceof Runout runout && !runout.verdicts().isEmpty())
        .isPresent();
  }
}
