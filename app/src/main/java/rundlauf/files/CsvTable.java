package rundlauf.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * Reads a table of readings: a header line, then rows; cells parted by what parts the header. Blank
 * lines and lines that begin with {@code #} are passed over.
 */
final class CsvTable {
  private final String file;
  private final char separator;
  private final CsvReader.CsvReaderBuilder parser;
  private final List<Entry.Scalar> columns;

  private CsvTable(String file, Line header) {
    this.file = file;
    this.separator = separator(header);
    this.parser =
        CsvReader.builder()
            .fieldSeparator(separator)
            .trimWhitespacesAroundQuotes(true)
            .allowUnclosedQuote(false);
    this.columns = cells(header, List.of());
    refuseUnnamed();
    if (columns.size() > Bounds.COLUMNS) {
      throw Refused.at(
          place(header), "columns-many", Arg.of(columns.size()), Arg.of(Bounds.COLUMNS));
    }
  }

  /**
   * The table of these lines.
   *
   * @param lines of the file or block
   * @param file the file they stand in, as the user named it
   * @param readings where the readings were asked for, when there is not even a header
   */
  static Table read(Iterator<Line> lines, String file, Place readings) {
    Line header = nextUsed(lines);
    if (header == null) {
      throw Refused.at(readings, "table-empty");
    }
    CsvTable table = new CsvTable(file, header);
    List<Table.Row> rows = new ArrayList<>();
    for (Line line = nextUsed(lines); line != null; line = nextUsed(lines)) {
      if ((long) rows.size() * table.columns.size() >= Bounds.CELLS) {
        throw Refused.at(table.place(line), "table-too-large", Arg.of(Bounds.CELLS));
      }
      rows.add(table.row(line));
    }
    return new Table(table.columns, rows, table.separator == ',', table.place(header));
  }

  private static @org.jspecify.annotations.Nullable Line nextUsed(Iterator<Line> lines) {
    while (lines.hasNext()) {
      Line line = lines.next();
      String text = line.text().strip();
      if (!text.isEmpty() && text.charAt(0) != '#') {
        return line;
      }
    }
    return null;
  }

  private void refuseUnnamed() {
    for (Entry.Scalar column : columns) {
      if (column.text().isEmpty()) {
        throw Refused.at(column.place().field("readings"), "column-unnamed");
      }
    }
  }

  private char separator(Line header) {
    String text = header.text();
    boolean semicolon = text.indexOf(';') >= 0;
    boolean tab = text.strip().indexOf('\t') >= 0;
    boolean comma = text.indexOf(',') >= 0;
    if ((semicolon ? 1 : 0) + (tab ? 1 : 0) + (comma ? 1 : 0) > 1) {
      throw Refused.at(place(header), "separators-mixed", Arg.typed(text));
    }
    return semicolon ? ';' : tab ? '\t' : ',';
  }

  private Table.Row row(Line line) {
    List<Entry.Scalar> cells = cells(line, columns);
    if (cells.size() != columns.size()) {
      boolean trap = separator == ',' && cells.size() > columns.size();
      String code = trap ? "row-long-comma" : "row-ragged";
      throw Refused.at(place(line), code, Arg.of(cells.size()), Arg.of(columns.size()));
    }
    return new Table.Row(cells, place(line));
  }

  private List<Entry.Scalar> cells(Line line, List<Entry.Scalar> names) {
    List<String> texts = texts(line);
    List<Entry.Scalar> cells = new ArrayList<>(texts.size());
    int from = 0;
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i).strip();
      int column = line.indent() + skipBlanks(line.text(), from) + 1;
      String field = names.isEmpty() ? text : i < names.size() ? names.get(i).text() : "";
      Place place = new Place(file, line.number(), column, field);
      cells.add(new Entry.Scalar(text, separator == ',', place));
      from = afterSeparator(line.text(), from);
    }
    return cells;
  }

  private List<String> texts(Line line) {
    try {
      return parser.ofSingleCsvRecord(line.text()).getFields();
    } catch (CsvParseException notOne) {
      throw Refused.at(place(line), "quotes-open", Arg.typed(line.text()));
    }
  }

  private static int skipBlanks(String text, int from) {
    int i = from;
    while (i < text.length() && text.charAt(i) == ' ') {
      i++;
    }
    return i;
  }

  /** Behind the next separator that stands outside quotes. */
  private int afterSeparator(String text, int from) {
    boolean quoted = false;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '"';
      if (c == separator && !quoted) {
        return i + 1;
      }
    }
    return text.length();
  }

  private Place place(Line line) {
    return new Place(file, line.number(), line.indent() + 1, "readings");
  }
}
