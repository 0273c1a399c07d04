package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.push.Line;
import rundlauf.report.Table.Row;

/** Readings against the load, each loop in the order taken, with the fitted lines. */
final class LoadChart {
  private static final Scale FIT = new Scale(Unit.MICROMETRE, 1);

  private LoadChart() {}

  static Chart of(Sheet sheet, List<Point> points, List<Line> fitted) {
    Scale force = new Scale(Unit.NEWTON, 2);
    Scale length =
        Scale.showing(Unit.MICROMETRE, Samples.of(points.stream().map(Point::reading).toList()), 1);
    List<Chart.Loop> loops = new ArrayList<>();
    boolean turned = points.stream().map(Point::dial).distinct().count() > 1;
    grouped(points).values().forEach(group -> loops.add(loop(group, turned)));
    List<FittedLine> lines =
        fitted.stream().flatMap(l -> FittedLine.of(l, points).stream()).toList();
    Saying caption = Saying.of("report-load", "");
    return new Chart.LoadLoop(
        sheet.chart("load"),
        caption,
        Saying.of("report-load-summary", ""),
        force,
        length,
        FIT,
        loops,
        lines.stream().map(LoadChart::line).toList(),
        twin(sheet, points, lines, new Scales(force, length), caption));
  }

  /** By the body touched and the setting of the dial, in the order first met. */
  private static Map<List<Object>, List<Point>> grouped(List<Point> points) {
    Map<List<Object>, List<Point>> groups = new LinkedHashMap<>();
    for (Point p : points) {
      List<Object> key = List.of(p.place(), p.at(), p.dial(), p.zeroed());
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(p);
    }
    return groups;
  }

  /**
   * @param turned whether the dial was turned between loops, so that each must say how it stood
   */
  private static Chart.Loop loop(List<Point> group, boolean turned) {
    Arg place = Arg.of(group.get(0).place());
    return new Chart.Loop(
        turned
            ? Saying.of("report-loop-along", "", place, Arg.of(group.get(0).dial(), Unit.DEGREE))
            : Saying.of("report-loop", "", place),
        Samples.of(group.stream().map(LoadChart::along).toList()),
        Samples.of(group.stream().map(Point::reading).toList()),
        group.stream().map(Point::branch).toList());
  }

  private static Chart.Line line(FittedLine fit) {
    return new Chart.Line(
        Saying.of("report-fitted-line", ""),
        Samples.of(0, fit.along(fit.most())),
        Samples.of(fit.reading(0), fit.reading(fit.most())));
  }

  /** The load's part along the dial: negative for a push the other way. */
  static double along(Point p) {
    return p.load() * Math.cos(p.direction() - p.dial());
  }

  private record Scales(Scale force, Scale length) {}

  private static Table twin(
      Sheet sheet, List<Point> points, List<FittedLine> lines, Scales scales, Saying caption) {
    List<Row> rows = new ArrayList<>();
    for (Point p : points) {
      rows.add(
          Row.of(
              new Cell.Link(Saying.of("report-line", "", Arg.of(p.line())), sheet.line(p.line())),
              new Cell.Typed(p.place()),
              new Cell.Said(Saying.of("report-branch-" + branch(p), "")),
              new Cell.Number(along(p), scales.force()),
              new Cell.Number(p.reading(), scales.length()),
              fitted(p, lines)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("line", "place", "branch", "load", "reading", "fitted-line")) {
      columns.add(Table.heading("report-column-" + name));
    }
    return Table.of(caption, columns, rows, Table.Kind.READINGS);
  }

  private static Cell fitted(Point p, List<FittedLine> lines) {
    return lines.stream()
        .filter(l -> FittedLine.belongs(p, l.line()))
        .findFirst()
        .<Cell>map(l -> new Cell.Number(l.reading(p.load()), FIT))
        .orElse(new Cell.Blank());
  }

  private static String branch(Point p) {
    return switch (p.branch()) {
      case UP -> "up";
      case DOWN -> "down";
      case UNSAID -> "unsaid";
    };
  }
}
