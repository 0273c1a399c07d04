package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.report.Table.Row;

/** Every trial as it was typed, line by line. */
final class AsTyped {
  private static final String READINGS = "readings";

  private AsTyped() {}

  static Section section(List<Sheet> sheets) {
    List<Section> parts = sheets.stream().map(AsTyped::sheet).toList();
    Block intro = Remarks.of(Remarks.Tone.NOTE, List.of(Saying.of("report-as-typed-intro", "")));
    return new Section("as-typed", Saying.of("report-as-typed", ""), List.of(intro), parts);
  }

  static Section sheet(Sheet sheet) {
    var trial = sheet.outcome().trial();
    List<Row> fields = new ArrayList<>();
    for (Map.Entry<String, Entry> field : trial.document().fields().entrySet()) {
      if (!(field.getKey().equals(READINGS) && trial.readings().isPresent())) {
        flatten(field.getKey(), field.getValue(), fields);
      }
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-column-line"),
            Table.heading("report-column-field"),
            Table.heading("report-column-typed"));
    List<Block> blocks = new ArrayList<>();
    Cell back = new Cell.Link(Saying.of("report-back-to-figures", ""), sheet.section());
    blocks.add(new Remarks(Remarks.Tone.NOTE, List.of(Remarks.Remark.of(back))));
    Saying caption = Saying.of("report-fields-caption", "", Arg.of(fields.size()));
    blocks.add(new Table(caption, columns, fields, Table.Kind.READINGS, true));
    readings(sheet).ifPresent(blocks::add);
    Saying heading = Saying.of("report-file", "", Arg.of(sheet.file()));
    return Section.of(sheet.readings(), heading, blocks);
  }

  private static void flatten(String path, Entry entry, List<Row> rows) {
    if (entry instanceof Entry.Scalar scalar) {
      rows.add(
          Row.of(
              new Cell.Typed(String.valueOf(scalar.place().line())),
              new Cell.Typed(path),
              new Cell.Typed(scalar.text())));
    } else if (entry instanceof Entry.Fields fields) {
      fields.fields().forEach((name, value) -> flatten(path + "." + name, value, rows));
    } else if (entry instanceof Entry.Items items) {
      for (int i = 0; i < items.items().size(); i++) {
        flatten(path + "[" + i + "]", items.items().get(i), rows);
      }
    }
  }

  /** The rows as they were typed, folded; none of a trial without a table. */
  static Optional<Block> readings(Sheet sheet) {
    return sheet.outcome().trial().readings().map(table -> readings(sheet, table));
  }

  private static Block readings(Sheet sheet, rundlauf.bench.Table table) {
    List<Cell> columns = new ArrayList<>();
    columns.add(Table.heading("report-column-line"));
    table.columns().forEach(c -> columns.add(new Cell.Typed(c.text())));
    List<Row> rows = new ArrayList<>();
    for (rundlauf.bench.Table.Row row : table.rows()) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Typed(String.valueOf(row.place().line())));
      row.cells().forEach(c -> cells.add(new Cell.Typed(c.text())));
      rows.add(new Row(sheet.line(row.place().line()), cells));
    }
    Saying caption =
        Saying.of(
            "report-readings-caption",
            "",
            Arg.of(rows.size()),
            Arg.of(sheet.within(table.place().file())));
    return new Table(caption, columns, rows, Table.Kind.READINGS, true);
  }
}
