package rundlauf.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Place;

/** Documents as they would have been typed, for tests. All of them are invented. */
public final class Typed {
  private static final String FILE = "a.yaml";

  private Typed() {}

  /** Fields from names and values in turn; a value is a text or an entry. */
  public static Entry.Fields fields(Object... namesAndValues) {
    Map<String, Entry> fields = new LinkedHashMap<>();
    Map<String, Place> keys = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      String name = (String) namesAndValues[i];
      Object value = namesAndValues[i + 1];
      fields.put(name, value instanceof Entry e ? e : text(name, (String) value));
      keys.put(name, new Place(FILE, i / 2 + 1, 1, name));
    }
    return new Entry.Fields(fields, keys, new Place(FILE, 1, 1, ""));
  }

  public static Entry.Items items(Entry... items) {
    return new Entry.Items(List.of(items), new Place(FILE, 1, 1, ""));
  }

  public static Entry.Scalar text(String field, String text) {
    return new Entry.Scalar(text, false, new Place(FILE, 1, 1, field));
  }

  /** A table whose cells are parted by commas in these lines; in it, none parts. */
  public static Table table(String... lines) {
    List<Entry.Scalar> header = cells(lines[0], 1);
    List<Table.Row> rows = new ArrayList<>();
    for (int i = 1; i < lines.length; i++) {
      rows.add(new Table.Row(cells(lines[i], i + 1), new Place(FILE, i + 1, 1, "readings")));
    }
    return new Table(header, rows, false, new Place(FILE, 1, 1, "readings"));
  }

  private static List<Entry.Scalar> cells(String line, int number) {
    return Arrays.stream(line.split(",", -1))
        .map(c -> new Entry.Scalar(c.strip(), false, new Place(FILE, number, 1, "cell")))
        .toList();
  }

  public static Trial trial(Entry.Fields document, String... table) {
    Optional<Table> readings = table.length == 0 ? Optional.empty() : Optional.of(table(table));
    return new Trial(FILE, document, readings);
  }
}
