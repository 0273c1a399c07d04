package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.cutting.prediction.CutFigures.ToothFigures;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.report.Table.Row;

/** What a cut does, drawn: chips by tooth, forces over the turn. */
final class CutCharts {
  /** Angles of a turn that are drawn; our choice: every five degrees. */
  private static final int DRAWN = 72;

  private static final Scale ANGLE = new Scale(Unit.DEGREE, 0);

  private CutCharts() {}

  /** Chips by tooth; empty where they are not known. */
  static Optional<Chart> chips(Prediction best, String id) {
    List<Chart.Tooth> teeth = new ArrayList<>();
    for (ToothFigures tooth : best.figures().teeth()) {
      if (!tooth.peak().known()) {
        return Optional.empty();
      }
      Figure.Estimate chip = tooth.peak().estimate().orElseThrow();
      teeth.add(
          new Chart.Tooth(
              Saying.of("report-tooth", "", Arg.of(tooth.tooth())),
              chip.value(),
              chip.interval().low(),
              chip.interval().high()));
    }
    Scale length = new Scale(Unit.MICROMETRE, 1);
    Saying caption = Saying.of("report-chips", "");
    return Optional.of(
        new Chart.Chips(
            id + "-chips",
            caption,
            Saying.of("report-chips-summary", ""),
            length,
            teeth,
            chipTable(caption, teeth, length)));
  }

  private static Table chipTable(Saying caption, List<Chart.Tooth> teeth, Scale length) {
    List<Row> rows = new ArrayList<>();
    for (Chart.Tooth tooth : teeth) {
      rows.add(
          Row.of(
              new Cell.Said(tooth.name()),
              new Cell.Number(tooth.chip(), length),
              new Cell.Number(tooth.low(), length),
              new Cell.Number(tooth.high(), length)));
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-column-tooth"),
            Table.heading("report-column-chip"),
            Table.heading("report-column-low"),
            Table.heading("report-column-high"));
    return Table.of(caption, columns, rows, Table.Kind.READINGS);
  }

  /** Forces over the turn in the central state; empty where they are not known. */
  static Optional<Chart> forces(Prediction best, String id) {
    return best.turn().map(turn -> forces(turn, id));
  }

  private static Chart forces(ForceTurn turn, String id) {
    List<Chart.Row> rows = new ArrayList<>();
    rows.add(row("x", turn.x()));
    rows.add(row("y", turn.y()));
    if (turn.z().size() > 0) {
      rows.add(row("z", turn.z()));
    }
    rows.add(row("lateral", turn.lateral()));
    Scale force = Scale.threeDigits(Unit.NEWTON, turn.lateral());
    Samples angles = Samples.generate(DRAWN, i -> 2 * Math.PI * i / DRAWN);
    Saying caption = Saying.of("report-forces", "");
    return new Chart.Forces(
        id + "-forces",
        caption,
        Saying.of("report-forces-summary", ""),
        ANGLE,
        force,
        angles,
        rows,
        forceTable(caption, angles, rows, force));
  }

  private static Chart.Row row(String name, Samples all) {
    return new Chart.Row(
        Saying.of("report-force-" + name, ""),
        Samples.generate(DRAWN, i -> all.get(i * all.size() / DRAWN)));
  }

  private static Table forceTable(
      Saying caption, Samples angles, List<Chart.Row> rows, Scale force) {
    List<Row> lines = new ArrayList<>();
    for (int i = 0; i < angles.size(); i++) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Number(angles.get(i), ANGLE));
      for (Chart.Row row : rows) {
        cells.add(new Cell.Number(row.forces().get(i), force));
      }
      lines.add(new Row("", cells));
    }
    List<Cell> columns = new ArrayList<>();
    columns.add(Table.heading("report-column-angle"));
    rows.forEach(row -> columns.add(new Cell.Said(row.name())));
    return Table.of(caption, columns, lines, Table.Kind.READINGS);
  }
}
