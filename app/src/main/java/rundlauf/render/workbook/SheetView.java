package rundlauf.render.workbook;

import java.util.List;
import java.util.Optional;
import rundlauf.guide.Guidance;
import rundlauf.quantity.Saying;
import rundlauf.readings.RunoutReadings;
import rundlauf.report.LivePart;
import rundlauf.report.Outcome;

/**
 * What a sheet shows now.
 *
 * @param version rises with everything that is added to the trial
 * @param earlier what the first readings tell, where all together tell nothing yet
 * @param begun the turn that is being read, where it bears no figure yet
 * @param rows the readings, the latest first
 * @param photos addresses of the photos
 */
public record SheetView(
    int version,
    Outcome outcome,
    Optional<LivePart.Earlier> earlier,
    Optional<RunoutReadings.Sweep> begun,
    Guidance guidance,
    List<Saying> standing,
    List<Row> rows,
    List<String> photos) {
  public SheetView {
    standing = List.copyOf(standing);
    rows = List.copyOf(rows);
    photos = List.copyOf(photos);
  }

  /**
   * A reading.
   *
   * @param number its position in the trial
   * @param key by which it is struck out
   * @param cells what was typed: columns and texts
   * @param struck the reason, where it was struck out
   */
  public record Row(int number, String key, List<Cell> cells, Optional<String> struck) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** What was typed under a column. */
  public record Cell(String column, String text) {}

  /** The key of the last reading that is not struck out; empty text where there is none. */
  String lastKey() {
    return rows.stream().filter(row -> row.struck().isEmpty()).map(Row::key).findFirst().orElse("");
  }
}
