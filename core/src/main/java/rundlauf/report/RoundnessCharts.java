package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rundlauf.maths.Circle;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.FormCircles;
import rundlauf.reduce.runout.Runout;
import rundlauf.report.RoundnessCircles.Kind;
import rundlauf.report.RoundnessCircles.Line;
import rundlauf.report.Table.Row;

/** The form of every sweep that bears one, with its reference circles, on one common scale. */
final class RoundnessCharts {
  private static final Scale ANGLE = new Scale(Unit.DEGREE, 0);
  private static final Scale LENGTH = new Scale(Unit.MICROMETRE, 1);

  /** The twin has every fifth point of the profile: 24 rows. */
  private static final int STEP = 5;

  private RoundnessCharts() {}

  static List<Chart> of(Sheet sheet, Runout runout) {
    List<Runout.Station> drawn =
        runout.stations().stream().filter(s -> s.form().circles().isPresent()).toList();
    double largest = 0;
    for (Runout.Station station : drawn) {
      largest = Math.max(largest, largest(station.form().circles().orElseThrow()));
    }
    List<Chart> charts = new ArrayList<>();
    for (Runout.Station station : drawn) {
      double span = PolarCharts.roundUp(Math.max(largest, Unit.MICROMETRE.toSi(0.1)));
      charts.add(chart(sheet, station, span, charts.size() + 1));
    }
    return charts;
  }

  private static double largest(FormCircles form) {
    double largest = form.profile().stream().map(Math::abs).max().orElse(0);
    for (Line line : lines(form, closed(form))) {
      largest = Math.max(largest, line.heights().stream().map(Math::abs).max().orElse(0));
    }
    return largest;
  }

  private static Chart chart(Sheet sheet, Runout.Station station, double span, int number) {
    FormCircles form = station.form().circles().orElseThrow();
    Samples angles = closed(form);
    int n = form.profile().size();
    Samples profile = Samples.generate(n + 1, p -> form.profile().get(p % n));
    List<Line> lines = lines(form, angles);
    Saying caption = caption(station);
    return new RoundnessCircles(
        sheet.chart("roundness-" + number),
        caption,
        Saying.of(
            "report-roundness-summary",
            "",
            Arg.about(form.minimumZone().width(), Unit.MICROMETRE),
            Arg.about(span, Unit.MICROMETRE)),
        ANGLE,
        LENGTH,
        angles,
        profile,
        lines,
        span,
        twin(caption, angles, profile, lines));
  }

  private static Samples closed(FormCircles form) {
    int n = form.profile().size();
    return Samples.generate(n + 1, p -> FormCircles.angle(p, n));
  }

  private static List<Line> lines(FormCircles form, Samples angles) {
    Circle zone = form.minimumZone();
    return List.of(
        line(Kind.LEAST_SQUARES, form, form.leastSquares(), form.leastSquaresRadius(), angles),
        line(Kind.ZONE_INNER, form, zone, zone.inner(), angles),
        line(Kind.ZONE_OUTER, form, zone, zone.outer(), angles),
        line(Kind.CIRCUMSCRIBED, form, form.circumscribed(), form.circumscribed().outer(), angles),
        line(Kind.INSCRIBED, form, form.inscribed(), form.inscribed().inner(), angles));
  }

  private static Line line(
      Kind kind, FormCircles form, Circle about, double radius, Samples angles) {
    return new Line(
        kind,
        Saying.of("report-circle-" + code(kind), ""),
        angles.map(angle -> form.height(about, radius, angle)),
        about.x(),
        about.y());
  }

  private static String code(Kind kind) {
    return switch (kind) {
      case LEAST_SQUARES -> "lsc";
      case ZONE_INNER -> "mzc-inner";
      case ZONE_OUTER -> "mzc-outer";
      case CIRCUMSCRIBED -> "mcc";
      case INSCRIBED -> "mic";
    };
  }

  private static Saying caption(Runout.Station station) {
    OptionalDouble at = station.sweep().station();
    Arg clamping = Arg.of(station.sweep().clamping());
    return at.isPresent()
        ? Saying.of("report-roundness-at", "", Arg.of(at.getAsDouble(), Unit.MILLIMETRE), clamping)
        : Saying.of("report-roundness", "", clamping);
  }

  private static Table twin(Saying caption, Samples angles, Samples profile, List<Line> lines) {
    List<Row> rows = new ArrayList<>();
    rows.add(centres("report-circle-centre-along", lines, true));
    rows.add(centres("report-circle-centre-across", lines, false));
    for (int p = 0; p < angles.size() - 1; p += STEP) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Number(angles.get(p), ANGLE));
      cells.add(new Cell.Number(profile.get(p), LENGTH));
      for (Line line : lines) {
        cells.add(new Cell.Number(line.heights().get(p), LENGTH));
      }
      rows.add(new Row("", cells));
    }
    List<Cell> columns = new ArrayList<>();
    columns.add(Table.heading("report-column-angle"));
    columns.add(Table.heading("report-column-profile"));
    lines.forEach(line -> columns.add(new Cell.Said(line.name())));
    return Table.of(caption, columns, rows, Table.Kind.READINGS);
  }

  private static Row centres(String name, List<Line> lines, boolean along) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Table.heading(name));
    cells.add(new Cell.Blank());
    for (Line line : lines) {
      cells.add(new Cell.Number(along ? line.along() : line.across(), LENGTH));
    }
    return new Row("", cells);
  }
}
