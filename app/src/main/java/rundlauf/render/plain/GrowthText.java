package rundlauf.render.plain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Figure;
import rundlauf.reduce.growth.Growth;

/** The figures of a growth trial as text. */
final class GrowthText {
  private GrowthText() {}

  static void write(Sheet sheet, Growth growth) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("label-growth", growth.growth());
    figures.put("label-time-constant", growth.timeConstant());
    figures.put("label-settled-after", growth.settledAfter());
    figures.put("label-per-kelvin", growth.perKelvin());
    sheet.group("heading-growth", List.of(), figures);
    Blame.write(sheet, sheet.word("label-growth"), growth.growth(), growth.head().name());
  }
}
