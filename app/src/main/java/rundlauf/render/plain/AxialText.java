package rundlauf.render.plain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Figure;
import rundlauf.reduce.axial.Axial;

/** The figures of an axial trial as text. */
final class AxialText {
  private AxialText() {}

  static void write(Sheet sheet, Axial axial) {
    Map<String, Figure> whole = new LinkedHashMap<>();
    whole.put("label-end-play", axial.endPlay());
    whole.put("label-axial-stiffness", axial.axialStiffness());
    whole.put("label-compliance", axial.compliance());
    whole.put("label-hysteresis", axial.hysteresis());
    sheet.group("heading-along-axis", List.of(), whole);
    axial.straightness().ifPresent(test -> SideLoadText.straightness(sheet, test));
    String file = axial.head().name();
    Blame.write(sheet, sheet.word("label-axial-stiffness"), axial.axialStiffness(), file);
    Blame.write(sheet, sheet.word("label-end-play"), axial.endPlay(), file);
  }
}
