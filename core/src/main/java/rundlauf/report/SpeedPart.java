package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.SpeedReadings.Point;
import rundlauf.reduce.speed.Speed;
import rundlauf.report.Table.Row;

/** A speed trial: its figures, the settings of the wanted speeds, and the curve. */
final class SpeedPart {
  private static final Scale SPEED = new Scale(Unit.RPM, 0);

  private SpeedPart() {}

  static List<Block> blocks(Sheet sheet, Speed speed) {
    var figures =
        FigureTable.only(
            speed.figures(), p -> !p.startsWith("curve[") && !p.startsWith("settingFor["));
    List<Block> blocks = new ArrayList<>();
    blocks.add(FigureTable.of(sheet, figures));
    if (!speed.settingFor().isEmpty()) {
      blocks.add(wanted(sheet, speed));
    }
    if (!speed.curve().isEmpty()) {
      blocks.add(chart(sheet, speed));
    }
    BudgetChart.of(sheet, "fastest", Saying.of("report-budget-fastest", ""), speed.usableMax())
        .ifPresent(blocks::add);
    return blocks;
  }

  private static Table wanted(Sheet sheet, Speed speed) {
    List<Row> rows = new ArrayList<>();
    for (Speed.SettingFor s : speed.settingFor()) {
      rows.add(Row.of(new Cell.Number(s.speed(), SPEED), sheet.shown(s.setting())));
    }
    List<Cell> columns =
        List.of(Table.heading("report-column-wanted"), new Cell.Said(setting(speed)));
    return Table.of(Saying.of("report-wanted-caption", ""), columns, rows, Table.Kind.FIGURES);
  }

  private static Saying setting(Speed speed) {
    String unit = speed.readings().settingUnit();
    return unit.isEmpty()
        ? Saying.of("report-column-setting", "")
        : Saying.of("report-column-setting-in", "", Arg.of(unit));
  }

  static Chart chart(Sheet sheet, Speed speed) {
    List<Point> points = speed.readings().points();
    List<Speed.CurvePoint> curve = speed.curve().stream().filter(c -> c.speed().known()).toList();
    Samples settings = Samples.of(points.stream().map(Point::setting).toList());
    Saying caption = Saying.of("report-speed", "");
    return new Chart.SpeedCurve(
        sheet.chart("speed"),
        caption,
        Saying.of("report-speed-summary", ""),
        Scale.showing(Unit.ONE, settings, 3),
        speed.readings().settingUnit(),
        SPEED,
        settings,
        Samples.of(points.stream().map(Point::speed).toList()),
        Samples.of(curve.stream().map(Speed.CurvePoint::setting).toList()),
        Samples.of(curve.stream().map(c -> c.speed().value()).toList()),
        Samples.of(curve.stream().map(c -> estimate(c).interval().low()).toList()),
        Samples.of(curve.stream().map(c -> estimate(c).interval().high()).toList()),
        usable(speed),
        twin(sheet, speed, Scale.showing(Unit.ONE, settings, 3), caption));
  }

  private static Figure.Estimate estimate(Speed.CurvePoint point) {
    return point.speed().estimate().orElseThrow();
  }

  private static Optional<Samples> usable(Speed speed) {
    return speed.usableMin().known() && speed.usableMax().known()
        ? Optional.of(Samples.of(speed.usableMin().value(), speed.usableMax().value()))
        : Optional.empty();
  }

  /** Readings row by row, with the curve where the curve has that setting. */
  private static Table twin(Sheet sheet, Speed speed, Scale setting, Saying caption) {
    List<Row> rows = new ArrayList<>();
    for (Point p : speed.readings().points()) {
      Cell fitted =
          speed.curve().stream()
              .filter(c -> c.setting() == p.setting())
              .findFirst()
              .map(c -> sheet.shown(c.speed()))
              .orElse(new Cell.Blank());
      rows.add(
          Row.of(
              new Cell.Link(Saying.of("report-line", "", Arg.of(p.line())), sheet.line(p.line())),
              new Cell.Number(p.setting(), setting),
              new Cell.Number(p.speed(), SPEED),
              fitted));
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-column-line"),
            new Cell.Said(setting(speed)),
            Table.heading("report-column-speed"),
            Table.heading("report-column-curve"));
    return Table.of(caption, columns, rows, Table.Kind.READINGS);
  }
}
