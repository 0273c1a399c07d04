package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.CoarseRise;
import rundlauf.maths.RiseFit;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.GrowthReadings.Point;
import rundlauf.reduce.growth.Growth;
import rundlauf.report.Table.Row;

/** A growth trial: its figures, the readings over time with the fitted curve, and the budget. */
final class GrowthPart {
  private static final Scale FIT = new Scale(Unit.MICROMETRE, 1);
  private static final double TAIL = (1 - Interval.LEVEL) / 2;

  private GrowthPart() {}

  static List<Block> blocks(Sheet sheet, Growth growth) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(FigureTable.of(sheet, growth.figures()));
    blocks.add(chart(sheet, growth));
    Saying caption = Saying.of("report-budget-growth", "");
    BudgetChart.of(sheet, "growth", caption, growth.growth()).ifPresent(blocks::add);
    return blocks;
  }

  static Chart chart(Sheet sheet, Growth growth) {
    GrowthReadings readings = growth.readings();
    Samples times = Samples.of(readings.points().stream().map(Point::time).toList());
    Samples read = Samples.of(readings.points().stream().map(Point::reading).toList());
    List<WeightedSamples> curve = curve(readings, growth.curve());
    Scale time = Scale.showing(Unit.MINUTE, times, 2);
    Scale length = Scale.showing(Unit.MICROMETRE, read, 1);
    Saying caption = Saying.of("report-growth", "");
    return new Chart.Rise(
        sheet.chart("growth"),
        caption,
        Saying.of("report-growth-summary", ""),
        time,
        length,
        FIT,
        times,
        read,
        at(curve, 0.5),
        at(curve, TAIL),
        at(curve, 1 - TAIL),
        twin(sheet, readings.points(), curve, time, length));
  }

  /** Where the curve stood at each reading, by its draws. */
  private static List<WeightedSamples> curve(GrowthReadings readings, CoarseRise curve) {
    List<WeightedSamples> all = new ArrayList<>();
    for (Point p : readings.points()) {
      double time = p.time() - readings.start();
      all.add(
          WeightedSamples.of(
              Samples.generate(
                  curve.rise().size(),
                  k ->
                      curve.offset().get(k)
                          + curve.rise().get(k)
                              * RiseFit.share(
                                  time, readings.span(), curve.timeConstant().get(k)))));
    }
    return all;
  }

  private static Samples at(List<WeightedSamples> curve, double quantile) {
    return Samples.generate(curve.size(), i -> curve.get(i).quantile(quantile));
  }

  private static Table twin(
      Sheet sheet, List<Point> points, List<WeightedSamples> curve, Scale time, Scale length) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Point p = points.get(i);
      rows.add(
          Row.of(
              new Cell.Link(Saying.of("report-line", "", Arg.of(p.line())), sheet.line(p.line())),
              new Cell.Number(p.time(), time),
              new Cell.Number(p.reading(), length),
              new Cell.Number(curve.get(i).quantile(0.5), FIT),
              new Cell.Number(curve.get(i).quantile(TAIL), FIT),
              new Cell.Number(curve.get(i).quantile(1 - TAIL), FIT)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("line", "time", "reading", "fit", "low", "high")) {
      columns.add(Table.heading("report-column-" + name));
    }
    return Table.of(Saying.of("report-growth", ""), columns, rows, Table.Kind.READINGS);
  }
}
