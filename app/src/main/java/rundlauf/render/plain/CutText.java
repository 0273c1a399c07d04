package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.prediction.CutFigures;
import rundlauf.cutting.prediction.CutTask;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.render.Sentences;

/** A predicted cut as a page of plain text: cautions, limits, then figures. */
public final class CutText {
  /** Groups of figures, by how their paths begin, in the order they are read. */
  private static final List<String> GROUPS =
      List.of("chip", "force", "torque", "power", "deflection", "stress", "surface", "kinematics");

  private final Sheet sheet;
  private final Prediction found;

  private CutText(Prediction found) {
    this.sheet = new Sheet(List.of());
    this.found = found;
  }

  /**
   * The page, each line ended, at most 80 columns where words can be parted.
   *
   * @param file the cut as the user named it
   */
  public static String of(String file, Optional<String> title, Prediction found) {
    return new CutText(found).write(file, title);
  }

  private String write(String file, Optional<String> title) {
    sheet.line(file + ": " + sheet.word("kind-cut"));
    title.ifPresent(sheet::paragraph);
    sheet.paragraph(cut(sheet, found.task(), found));
    sheet.paragraph(sheet.word("range-meaning"));
    sheet.bullets("heading-cautions", found.cautions());
    limits(sheet, found);
    GROUPS.forEach(this::group);
    rigid();
    assumed(sheet, found);
    sheet.bullets("heading-advice", found.advice());
    return sheet.text();
  }

  /** The cut in one sentence, in shop numbers. */
  static String cut(Sheet sheet, CutTask task, Prediction found) {
    var cut = task.cut();
    String operation = cut.operation().name().toLowerCase(Locale.ROOT).replace('_', '-');
    SetupCharacter setup = task.setup();
    List<Arg> args = new ArrayList<>();
    args.add(Arg.term("operation-" + operation));
    args.add(Arg.of(task.cutter().diameter().si(), Unit.MILLIMETRE));
    args.add(Arg.of(task.cutter().teeth()));
    args.add(Arg.of(task.material().name()));
    args.add(Arg.of(cut.speed().si(), Unit.RPM));
    args.add(Arg.of(found.figures().at("kinematics.feed").value(), Unit.MILLIMETRE_PER_MINUTE));
    args.add(Arg.of(cut.axial().si(), Unit.MILLIMETRE));
    args.add(Arg.of(cut.radial().si(), Unit.MILLIMETRE));
    String words = Sentences.text(new Saying("cut-in-words", "", args));
    return setup.name().isEmpty()
        ? words
        : words + " " + sheet.word("cut-on-setup", Arg.of(setup.name()));
  }

  /** Every limit in a row, and all judged ones together. */
  static void limits(Sheet sheet, Prediction found) {
    sheet.heading("heading-limits");
    for (Limit limit : found.limits()) {
      sheet.row(sheet.word("term.limit-" + limit.code()), limit(sheet, limit));
    }
    long judged = found.limits().stream().filter(Limit::judged).count();
    sheet.paragraph(sheet.word("limits-together", Arg.of(judged), odds(found.probability())));
  }

  private static String limit(Sheet sheet, Limit limit) {
    if (!limit.judged()) {
      String value = limit.value() instanceof Missing ? "" : sheet.value(limit.value()) + ": ";
      return value + sheet.word("limit-not-judged", Arg.of(Sentences.text(limit.why())));
    }
    String code = limit.holds() ? "limit-row-holds" : "limit-row-fails";
    return sheet.word(
        code,
        Arg.of(sheet.value(limit.value()) + mark(sheet, limit.assumedOfValue())),
        Arg.term(limit.atLeast() ? "at-least" : "at-most"),
        Arg.of(sheet.value(limit.allowed()) + mark(sheet, limit.assumedOfAllowed())),
        odds(limit.probability().orElseThrow()));
  }

  private static String mark(Sheet sheet, List<Saying> assumed) {
    return assumed.isEmpty() ? "" : " " + sheet.word("mark-assumed");
  }

  /** So few draws cannot tell a probability of 99 % from certainty, nor 1 % from none. */
  static Arg odds(double probability) {
    if (probability > 0.99) {
      return Arg.term("odds-over");
    }
    return probability < 0.01
        ? Arg.term("odds-under")
        : Arg.of(Math.round(100 * probability) + " in 100");
  }

  private void group(String name) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    found
        .figures()
        .byPath()
        .forEach(
            (path, figure) -> {
              if (path.startsWith(name + ".")) {
                figures.put(path, figure);
              }
            });
    sheet.heading("heading-cut-" + name);
    if (name.equals("chip")) {
      teeth(found.figures());
    }
    rows(figures);
  }

  private void teeth(CutFigures figures) {
    for (CutFigures.ToothFigures tooth : figures.teeth()) {
      String at = "chip.perTooth[" + (tooth.tooth() - 1) + "].peak";
      if (tooth.peak().known()) {
        sheet.row(sheet.word("label-tooth", Arg.of(tooth.tooth())), value(at, tooth.peak()));
      }
    }
  }

  private void rows(Map<String, Figure> figures) {
    Map<String, Figure> missing = new LinkedHashMap<>();
    figures.forEach(
        (path, figure) -> {
          if (figure.known()) {
            sheet.row(sheet.word("figure." + path), value(path, figure));
          } else {
            missing.put("figure." + path, figure);
          }
        });
    sheet.figures(missing);
  }

  private String value(String path, Figure figure) {
    return sheet.value(figure) + mark(sheet, found.assumed().getOrDefault(path, List.of()));
  }

  /** The rigid answer, where it is another one. */
  private void rigid() {
    if (found.rigid().isEmpty()) {
      return;
    }
    CutFigures rigid = found.rigid().get();
    sheet.heading("heading-rigid");
    for (CutFigures.ToothFigures tooth : rigid.teeth()) {
      sheet.figure(sheet.word("label-tooth", Arg.of(tooth.tooth())), tooth.peak());
    }
    for (String path : List.of("force.peak.lateral", "torque.mean", "power.cutting")) {
      sheet.figure(sheet.word("figure." + path), rigid.at(path));
    }
  }

  /** What is assumed beneath the numbers so marked. */
  static void assumed(Sheet sheet, Prediction found) {
    List<Saying> all = new ArrayList<>();
    found.assumed().values().forEach(all::addAll);
    found.limits().forEach(limit -> all.addAll(limit.assumed()));
    sheet.bullets("heading-assumed", all.stream().distinct().toList());
  }
}
