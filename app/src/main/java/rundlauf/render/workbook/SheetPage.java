package rundlauf.render.workbook;

import java.util.List;

/**
 * The page of a sheet.
 *
 * @param base the address of its trial
 * @param name tells this trial from all others, on every bench
 * @param heading the trial in words
 * @param conditions fields that say how it is taken
 * @param reasons why a reading is often struck out
 * @param words of the script, as JSON
 * @param now the sheet as it stands, as JSON
 */
public record SheetPage(
    String base,
    String name,
    String heading,
    List<FormField> conditions,
    List<String> reasons,
    String words,
    String now) {
  public SheetPage {
    conditions = List.copyOf(conditions);
    reasons = List.copyOf(reasons);
  }
}
