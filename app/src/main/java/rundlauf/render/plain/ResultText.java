package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
import rundlauf.reduce.growth.Growth;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.safety.Inspection;

/** One reduced trial as a page of plain text. */
public final class ResultText {
  private ResultText() {}

  /** The page, each line ended, at most 80 columns where words can be parted. */
  public static String of(Reduced result) {
    var sheet = new Sheet(result.advice());
    head(sheet, result.head());
    if (result.figures().values().stream().anyMatch(ResultText::hasRange)) {
      sheet.paragraph(sheet.word("range-meaning"));
    }
    sheet.bullets("heading-cautions", result.cautions());
    figures(sheet, result);
    String after = result instanceof Inspection ? "heading-besides" : "heading-advice";
    sheet.bullets(after, result.advice());
    return sheet.text();
  }

  private static boolean hasRange(Figure figure) {
    return figure.estimate().filter(e -> e.interval().low() < e.interval().high()).isPresent();
  }

  private static void head(Sheet sheet, TrialHead head) {
    sheet.line(head.file() + ": " + sheet.word("kind-" + head.kind()));
    head.title().ifPresent(sheet::paragraph);
    List<String> facts = new ArrayList<>();
    head.setup().ifPresent(setup -> facts.add(sheet.word("fact-setup", Arg.of(setup))));
    head.date().ifPresent(date -> facts.add(sheet.word("fact-date", Arg.of(date))));
    if (!facts.isEmpty()) {
      sheet.paragraph(String.join(", ", facts));
    }
  }

  private static void figures(Sheet sheet, Reduced result) {
    if (result instanceof Runout runout) {
      RunoutText.write(sheet, runout);
    } else if (result instanceof SideLoad sideLoad) {
      SideLoadText.write(sheet, sideLoad);
    } else if (result instanceof Axial axial) {
      AxialText.write(sheet, axial);
    } else if (result instanceof Growth growth) {
      GrowthText.write(sheet, growth);
    } else if (result instanceof Speed speed) {
      SpeedText.write(sheet, speed);
    } else if (result instanceof Inspection inspection) {
      InspectionText.write(sheet, inspection);
    } else {
      throw new IllegalArgumentException("no text for " + result.getClass().getName());
    }
  }
}
