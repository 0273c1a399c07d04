package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.Runout;
import rundlauf.report.Table.Row;

/** A runout trial: the axis first, then every sweep, drawn round the turn. */
final class RunoutPart {
  private static final String SWEEPS = "stations[";
  private static final Scale COUNT = new Scale(Unit.ONE, 0);

  private RunoutPart() {}

  static List<Block> blocks(Sheet sheet, Runout runout) {
    Map<String, Figure> whole =
        FigureTable.only(runout.figures(), path -> !path.startsWith(SWEEPS));
    List<Block> blocks = new ArrayList<>();
    blocks.add(FigureTable.of(sheet, whole));
    blocks.add(sweeps(sheet, runout));
    blocks.addAll(PolarCharts.of(sheet, runout));
    BudgetChart.of(sheet, "tir", Saying.of("report-budget-tip", ""), runout.axis().tip().tir())
        .or(
            () ->
                BudgetChart.of(
                    sheet,
                    "tir",
                    Saying.of("report-budget-sweep", ""),
                    runout.stations().get(0).tir()))
        .ifPresent(blocks::add);
    return blocks;
  }

  private static Table sweeps(Sheet sheet, Runout runout) {
    Samples stations =
        Samples.of(
            runout.stations().stream().flatMap(s -> s.sweep().station().stream().boxed()).toList());
    Scale distance = Scale.showing(Unit.MILLIMETRE, stations, 3);
    List<Row> rows = new ArrayList<>();
    for (Runout.Station station : runout.stations()) {
      rows.add(
          Row.of(
              optional(station.sweep().station(), distance),
              new Cell.Number(station.sweep().clamping(), COUNT),
              sheet.shown(station.tir()),
              sheet.shown(station.eccentricity()),
              sheet.shown(station.highSpot()),
              sheet.shown(station.scatter()),
              sheet.shown(station.swing())));
    }
    List<Cell> columns = new ArrayList<>();
    columns.add(Table.heading("report-column-station"));
    columns.add(Table.heading("report-column-clamping"));
    for (String name : List.of("tir", "eccentricity", "highSpot", "scatter", "swing")) {
      columns.add(Table.heading("figure.stations." + name));
    }
    return new Table(Saying.of("report-sweeps-caption", ""), columns, rows, Table.Kind.FIGURES);
  }

  /** A number that need not have been given. */
  static Cell optional(OptionalDouble value, Scale scale) {
    return value.isPresent() ? new Cell.Number(value.getAsDouble(), scale) : new Cell.Blank();
  }
}
