package rundlauf.render.workbook;

import java.util.List;

/**
 * The page of a sheet.
 *
 * @param base the address of its trial
 * @param name tells this trial from all others, on every bench
 * @param heading the trial in words
 * @param reasons why a reading is often struck out
 * @param words of the script, as JSON
 * @param now the sheet as it stands, as JSON
 */
public record SheetPage(
    String base, String name, String heading, List<String> reasons, String words, String now) {
  public SheetPage {
    reasons = List.copyOf(reasons);
  }
}
