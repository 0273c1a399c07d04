package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.Runout;
import rundlauf.report.Table.Row;

/** A runout trial: the axis first, then every sweep, drawn round the turn. */
final class RunoutPart {
  private static final String SWEEPS = "stations[";
  private static final String PARTS = "parts[";
  private static final List<String> COLUMNS =
      List.of(
          "tir",
          "eccentricity",
          "highSpot",
          "scatter",
          "swing",
          "roundness.mzc",
          "synchronous",
          "asynchronous");
  private static final Scale COUNT = new Scale(Unit.ONE, 0);

  /** Our choice: more sweeps than this would bury the figures of the axis on a phone. */
  private static final int MOST_OPEN = 3;

  private RunoutPart() {}

  static List<Block> blocks(Sheet sheet, Runout runout) {
    Map<String, Figure> whole =
        FigureTable.only(
            runout.figures(), path -> !path.startsWith(SWEEPS) && !path.startsWith(PARTS));
    List<Block> blocks = new ArrayList<>();
    blocks.add(FigureTable.of(sheet, whole));
    blocks.addAll(PartsTable.blocks(sheet, runout));
    VerdictTable.of(sheet, runout.verdicts()).ifPresent(blocks::add);
    blocks.add(sweeps(sheet, runout));
    addReasons(runout, blocks);
    List<Chart> turns = PolarCharts.of(sheet, runout);
    if (!turns.isEmpty()) {
      blocks.add(Remarks.of(Remarks.Tone.NOTE, List.of(Saying.of("report-polar-key", ""))));
    }
    blocks.addAll(turns);
    addForms(sheet, runout, blocks);
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

  private static void addForms(Sheet sheet, Runout runout, List<Block> blocks) {
    List<Chart> forms = RoundnessCharts.of(sheet, runout);
    if (!forms.isEmpty()) {
      blocks.add(Remarks.of(Remarks.Tone.NOTE, List.of(Saying.of("report-roundness-key", ""))));
      blocks.addAll(forms);
    }
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
              brief(sheet, station.tir()),
              brief(sheet, station.eccentricity()),
              brief(sheet, station.highSpot()),
              brief(sheet, station.scatter()),
              brief(sheet, station.swing()),
              brief(sheet, station.form().mzc()),
              brief(sheet, station.form().synchronous()),
              brief(sheet, station.form().asynchronous())));
    }
    List<Cell> columns = new ArrayList<>();
    columns.add(Table.heading("report-column-station"));
    columns.add(Table.heading("report-column-clamping"));
    for (String name : COLUMNS) {
      columns.add(Table.heading("figure.stations." + name));
    }
    Saying caption = Saying.of("report-sweeps-caption", "", Arg.of(rows.size()));
    return new Table(caption, columns, rows, Table.Kind.FIGURES, rows.size() > MOST_OPEN);
  }

  /** A figure, or that it cannot be had; why stands once under the table. */
  static Cell brief(Sheet sheet, Figure figure) {
    return figure.known()
        ? sheet.shown(figure)
        : new Cell.Link(Saying.of("report-cannot-be-had", ""), sheet.readings());
  }

  private static void addReasons(Runout runout, List<Block> blocks) {
    Set<String> codes = new LinkedHashSet<>();
    List<Remarks.Remark> reasons = new ArrayList<>();
    Cell because = new Cell.Said(Saying.of("report-cannot-be-had-because", ""));
    FigureTable.only(runout.figures(), path -> path.startsWith(SWEEPS) || path.startsWith(PARTS))
        .values()
        .forEach(
            figure -> {
              if (figure instanceof Missing missing && codes.add(missing.why().code())) {
                reasons.add(Remarks.Remark.of(because, new Cell.Said(missing.why())));
              }
            });
    if (!reasons.isEmpty()) {
      blocks.add(new Remarks(Remarks.Tone.NOTE, reasons));
    }
  }

  /** A number that need not have been given. */
  static Cell optional(OptionalDouble value, Scale scale) {
    return value.isPresent() ? new Cell.Number(value.getAsDouble(), scale) : new Cell.Blank();
  }
}
