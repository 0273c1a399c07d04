package rundlauf.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.Reduced;
import rundlauf.report.Remarks.Tone;
import rundlauf.report.Table.Row;

/** One figure: how sure it is, what is to blame, and what it was before. */
public final class FigurePart {
  private static final Scale COUNT = new Scale(Unit.ONE, 0);

  private FigurePart() {}

  /**
   * The figure of a trial.
   *
   * @param outcome of the trial
   * @param path of the figure in the trial's output
   * @return empty where the trial has no such figure
   */
  public static Optional<Section> of(Bench bench, Outcome outcome, String path) {
    Sheet sheet = BenchReport.sheet(bench, outcome, 1);
    return figure(sheet, path).map(figure -> section(sheet, figure, path));
  }

  static Optional<Figure> figure(Sheet sheet, String path) {
    return sheet.reduced().flatMap(r -> Optional.ofNullable(r.figures().get(path)));
  }

  /** The name of a figure by its path, whichever of a list it is. */
  public static Saying name(String path) {
    return FigureTable.name(path.replaceAll("\\[\\d+]", ""));
  }

  private static Section section(Sheet sheet, Figure figure, String path) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(values(figure, path));
    BudgetChart.of(sheet, "figure", Saying.of("report-budget-figure", ""), figure)
        .ifPresent(blocks::add);
    Reduced reduced = sheet.reduced().orElseThrow();
    TrialPart.addRemarks(Tone.CAUTION, reduced.cautions(), blocks);
    TrialPart.addRemarks(Tone.ADVICE, reduced.advice(), blocks);
    AsTyped.readings(sheet).ifPresent(blocks::add);
    return Section.of("figure", Saying.of("figure-how-sure", ""), blocks);
  }

  private static Table values(Figure figure, String path) {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(new Cell.Said(name(path)), new Cell.Predicted(figure, false)));
    figure.estimate().ifPresent(estimate -> doubt(figure, estimate, rows));
    List<Cell> columns =
        List.of(Table.heading("report-column-figure"), Table.heading("report-column-value"));
    return Table.of(Saying.of("figure-caption", ""), columns, rows, Table.Kind.FIGURES);
  }

  private static void doubt(Figure figure, Figure.Estimate estimate, List<Row> rows) {
    Scale scale = Scale.uncertainty(figure.unit(), estimate.u());
    rows.add(row("report-standard-uncertainty", new Cell.Number(estimate.u(), scale)));
    if (estimate.dof().isPresent() && Double.isFinite(estimate.dof().getAsDouble())) {
      rows.add(
          row("report-degrees-of-freedom", new Cell.Number(estimate.dof().getAsDouble(), COUNT)));
    }
  }

  private static Row row(String name, Cell cell) {
    return Row.of(new Cell.Said(Saying.of(name, "")), cell);
  }

  /**
   * The same figure in trials of the same kind on the same setup, the oldest first.
   *
   * @param of the trial whose figure it is
   * @return empty where no other trial has it
   */
  public static Optional<Section> history(BenchResults results, Outcome of, String path) {
    List<Sheet> sheets =
        BenchReport.sheets(results).stream()
            .filter(s -> s.kind().equals(of.trial().kind()))
            .filter(s -> s.outcome().setup().equals(of.setup()))
            .filter(s -> figure(s, path).isPresent())
            .sorted(Comparator.comparing(Sheet::date))
            .toList();
    if (sheets.size() < 2) {
      return Optional.empty();
    }
    List<Row> rows = new ArrayList<>();
    for (Sheet sheet : sheets) {
      Cell trial = new Cell.Link(TrialPart.heading(sheet), sheet.section());
      figure(sheet, path)
          .ifPresent(f -> rows.add(Row.of(new Cell.Typed(sheet.date()), trial, sheet.shown(f))));
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-column-date"),
            Table.heading("report-column-trial"),
            Table.heading("report-column-value"));
    Saying caption = Saying.of("report-history", "");
    Table table = Table.of(caption, columns, rows, Table.Kind.FIGURES);
    List<Block> blocks = new ArrayList<>(List.of(table));
    FigureHistory.chart(sheets, path).ifPresent(blocks::add);
    return Optional.of(Section.of("history", caption, blocks));
  }
}
