package rundlauf.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.render.Charts;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Pages;
import rundlauf.report.Section;

/** Sections of a report as pieces of pages. */
final class Sections {
  private Sections() {}

  /** With the data of their charts, for a page that is there already. */
  static String piece(List<Section> sections, Wording words) {
    return piece("piece", Map.of(), sections, words);
  }

  /**
   * The same by another template.
   *
   * @param more that it asks for
   */
  static String piece(
      String template, Map<String, Object> more, List<Section> sections, Wording words) {
    Map<String, Object> given = new LinkedHashMap<>(more);
    given.put("sections", sections);
    given.put("words", words);
    given.put("charts", Charts.of(sections, words));
    return Pages.of(template, given);
  }
}
