package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.cutting.prediction.CutFigures;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;

/** A predicted cut as a page of plain text: cautions, limits, then figures. */
public final class CutText {
  /** Groups of figures, by how their paths begin, in the order they are read. */
  private static final List<String> GROUPS =
      List.of("chip", "force", "torque", "power", "deflection", "stress", "surface", "kinematics");

  /** Figures of the rigid answer that are shown beside the soft ones. */
  private static final List<String> RIGID =
      List.of("force.peak.lateral", "torque.mean", "power.cutting");

  private static final String TEETH_CUTTING = "chip.teethCutting";

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
    sheet.paragraph(CutWords.sentence(sheet, found.task(), found));
    sheet.paragraph(sheet.word("range-meaning"));
    sheet.bullets("heading-cautions", found.cautions());
    LimitTable.write(sheet, found);
    GROUPS.forEach(this::group);
    rigid();
    sheet.bullets("heading-assumed", assumed(found));
    sheet.bullets("heading-advice", found.advice());
    return sheet.text();
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
      if (tooth.peak().known()) {
        String label = sheet.word("label-tooth", Arg.of(tooth.tooth()));
        sheet.row(label, value(peak(tooth), tooth.peak()));
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
    return value(path, figure, found.assumed());
  }

  private String value(String path, Figure figure, Map<String, List<Saying>> assumed) {
    String mark = assumed.containsKey(path) ? " " + sheet.word("mark-assumed") : "";
    String shown = path.equals(TEETH_CUTTING) ? CutWords.count(figure) : CutWords.value(figure);
    return shown + mark;
  }

  /** The rigid answer, where it is another one. */
  private void rigid() {
    if (found.rigid().isEmpty()) {
      return;
    }
    CutFigures rigid = found.rigid().get();
    sheet.heading("heading-rigid");
    Map<String, List<Saying>> assumed = found.assumedWhenRigid();
    for (CutFigures.ToothFigures tooth : rigid.teeth()) {
      String label = sheet.word("label-tooth", Arg.of(tooth.tooth()));
      rigid(label, peak(tooth), tooth.peak(), assumed);
    }
    for (String path : RIGID) {
      rigid(sheet.word("label-rigid-" + path), path, rigid.at(path), assumed);
    }
  }

  private void rigid(String label, String path, Figure figure, Map<String, List<Saying>> assumed) {
    if (figure.known()) {
      sheet.row(label, value(path, figure, assumed));
    } else {
      sheet.figure(label, figure);
    }
  }

  private static String peak(CutFigures.ToothFigures tooth) {
    return "chip.perTooth[" + (tooth.tooth() - 1) + "].peak";
  }

  /** What is assumed beneath the numbers so marked. */
  static List<Saying> assumed(Prediction found) {
    List<Saying> all = new ArrayList<>();
    found.assumed().values().forEach(all::addAll);
    found.limits().forEach(limit -> all.addAll(limit.assumed()));
    return all.stream().distinct().toList();
  }
}
