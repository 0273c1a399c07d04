package rundlauf.render;

import java.util.List;
import rundlauf.report.Section;

/** The charts of pages that are more than a report. */
public final class Charts {
  private Charts() {}

  /** The charts of some sections as a JSON list that is safe inside a script element. */
  public static String of(List<Section> sections, Wording words) {
    return ChartData.of(sections, words);
  }
}
