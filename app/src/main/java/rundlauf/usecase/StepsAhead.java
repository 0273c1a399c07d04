package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.guide.Asked;
import rundlauf.guide.Given;
import rundlauf.guide.Guidance;
import rundlauf.guide.Guide;
import rundlauf.guide.Step;
import rundlauf.quantity.Place;

/** The steps that follow one another, so that a device goes on while the bench is not reached. */
final class StepsAhead {
  /** Our choice: two sweeps of a coarse dial, and the page stays small. */
  private static final int MOST = 36;

  private StepsAhead() {}

  static List<Step> of(Trial trial, Bench bench, Guidance first) {
    List<Step> ahead = new ArrayList<>();
    Trial then = trial;
    Optional<Step> next = first.step();
    while (next.isPresent() && ahead.size() < MOST) {
      ahead.add(next.get());
      then = answered(then, next.get());
      next = Guide.next(then, Optional.of(bench), Optional.empty()).step();
    }
    return ahead;
  }

  /** The trial as if a step had been answered, whatever was read. */
  private static Trial answered(Trial trial, Step step) {
    List<Entry.Scalar> columns =
        new ArrayList<>(trial.readings().map(Table::columns).orElse(List.of()));
    step.given().forEach(given -> addColumn(columns, given.column()));
    step.asked().forEach(asked -> addColumn(columns, asked.column()));
    List<Table.Row> rows = new ArrayList<>();
    trial.readings().ifPresent(t -> t.rows().forEach(row -> rows.add(widened(row, columns))));
    rows.add(row(columns, step));
    return new Trial(
        trial.file(),
        trial.document(),
        Optional.of(new Table(columns, rows, false, Place.NOWHERE)));
  }

  private static void addColumn(List<Entry.Scalar> columns, String name) {
    if (columns.stream().noneMatch(c -> c.text().equals(name))) {
      columns.add(scalar(name));
    }
  }

  private static Table.Row widened(Table.Row row, List<Entry.Scalar> columns) {
    List<Entry.Scalar> cells = new ArrayList<>(row.cells());
    while (cells.size() < columns.size()) {
      cells.add(scalar(""));
    }
    return new Table.Row(cells, row.place());
  }

  private static Table.Row row(List<Entry.Scalar> columns, Step step) {
    List<Entry.Scalar> cells =
        columns.stream().map(column -> scalar(text(column.text(), step))).toList();
    return new Table.Row(cells, Place.NOWHERE);
  }

  private static String text(String column, Step step) {
    for (Given given : step.given()) {
      if (given.column().equals(column)) {
        return given.text();
      }
    }
    for (Asked asked : step.asked()) {
      if (asked.column().equals(column)) {
        return asked.choices().isEmpty() ? "0" : asked.choices().get(0);
      }
    }
    return "";
  }

  private static Entry.Scalar scalar(String text) {
    return new Entry.Scalar(text, false, Place.NOWHERE);
  }
}
