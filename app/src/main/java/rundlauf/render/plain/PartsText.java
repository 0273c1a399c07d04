package rundlauf.render.plain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.Runout;
import rundlauf.render.Sentences;

/**
 * What each part adds, and how to set them against each other; where nothing is told apart, none.
 */
final class PartsText {
  private PartsText() {}

  static void write(Sheet sheet, Runout runout) {
    List<OptionalDouble> stations =
        runout.parts().stream().map(Runout.Part::station).distinct().toList();
    for (OptionalDouble station : stations) {
      List<Runout.Part> here =
          runout.parts().stream().filter(p -> p.station().equals(station)).toList();
      if (here.size() > 1) {
        station(sheet, station, here);
      }
    }
    if (runout.bestClocking().tir().known()) {
      best(sheet, runout.bestClocking());
    }
  }

  private static void station(Sheet sheet, OptionalDouble station, List<Runout.Part> here) {
    station.ifPresentOrElse(
        z -> sheet.heading("heading-parts", Arg.of(z, Unit.MILLIMETRE)),
        () -> sheet.heading("heading-parts-nowhere"));
    for (Runout.Part part : here) {
      String words = sheet.value(part.eccentricity());
      if (part.highSpot().known()) {
        words += ", " + sheet.word("label-high-spot") + " " + sheet.value(part.highSpot());
      }
      sheet.row(part.name(), words);
    }
  }

  private static void best(Sheet sheet, BestClocking best) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("label-tir-so-set", best.tir());
    figures.put("label-tir-as-clamped", best.insteadOf());
    Saying heading = best.setting();
    sheet.line("");
    sheet.paragraph(Sentences.text(heading));
    sheet.figures(figures);
  }
}
