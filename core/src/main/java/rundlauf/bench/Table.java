package rundlauf.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Place;

/**
 * Readings as they were typed: named columns of text.
 *
 * @param columns the header's cells, such as {@code reading_um}
 * @param rows each with as many cells as there are columns
 * @param commaParts whether the cells are parted by commas, so that no decimal comma can stand
 * @param place where the table begins
 */
public record Table(List<Entry.Scalar> columns, List<Row> rows, boolean commaParts, Place place) {
  /** One row; each cell knows its line. */
  public record Row(List<Entry.Scalar> cells, Place place) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** The cells of one of its rows in which something stands, by the names of their columns. */
  public Map<String, String> texts(Row row) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      String text = row.cells().get(i).text().strip();
      if (!text.isEmpty()) {
        texts.put(columns.get(i).text().strip(), text);
      }
    }
    return texts;
  }
}
