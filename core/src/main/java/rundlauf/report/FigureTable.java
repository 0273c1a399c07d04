package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.report.Table.Row;

/** Figures by name, each with its doubt and what is most to blame for it. */
final class FigureTable {
  private FigureTable() {}

  static Table of(Sheet sheet, Map<String, Figure> figures) {
    List<Row> rows = new ArrayList<>();
    Set<String> reasons = new LinkedHashSet<>();
    figures.forEach(
        (path, figure) -> {
          boolean said = figure instanceof Missing m && !reasons.add(m.why().code());
          Cell value = said ? asAbove(sheet) : sheet.shown(figure);
          rows.add(Row.of(new Cell.Said(name(path)), value, blame(sheet, figure)));
        });
    List<Cell> columns =
        List.of(
            Table.heading("report-column-figure"),
            Table.heading("report-column-value"),
            Table.heading("report-column-blame"));
    return Table.of(Saying.of("report-figures-caption", ""), columns, rows, Table.Kind.FIGURES);
  }

  /** A figure that cannot be had for a reason that stands in an earlier row. */
  private static Cell asAbove(Sheet sheet) {
    return new Cell.Link(Saying.of("report-cannot-be-had-as-above", ""), sheet.readings());
  }

  /** The figures whose path passes, in their order. */
  static Map<String, Figure> only(Map<String, Figure> figures, Predicate<String> path) {
    Map<String, Figure> some = new LinkedHashMap<>();
    figures.forEach(
        (name, figure) -> {
          if (path.test(name)) {
            some.put(name, figure);
          }
        });
    return some;
  }

  /** The word for a figure by its path, such as {@code axis.tip.tir}. */
  static Saying name(String path) {
    return Saying.of("figure." + path, "");
  }

  private static Cell blame(Sheet sheet, Figure figure) {
    return sheet.causes(figure).stream()
        .findFirst()
        .<Cell>map(c -> new Cell.Said(c.name()))
        .orElse(new Cell.Blank());
  }
}
