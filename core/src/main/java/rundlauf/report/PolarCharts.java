package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.Runout;
import rundlauf.report.Table.Row;

/** The sweeps of a runout trial, each drawn round the turn on one common scale. */
final class PolarCharts {
  private static final int FINEST_ANGLE = 1;
  private static final int FINEST_LENGTH = 1;

  private PolarCharts() {}

  /** One chart for each sweep that has readings round the turn. */
  static List<Chart> of(Sheet sheet, Runout runout) {
    return of(sheet, drawn(runout));
  }

  /** The chart of the last of them alone. */
  static Optional<Chart> last(Sheet sheet, Runout runout) {
    List<Runout.Station> drawn = drawn(runout);
    return of(sheet, drawn.subList(Math.max(0, drawn.size() - 1), drawn.size())).stream()
        .findFirst();
  }

  private static List<Runout.Station> drawn(Runout runout) {
    return runout.stations().stream().filter(s -> s.vector().isPresent()).toList();
  }

  private static List<Chart> of(Sheet sheet, List<Runout.Station> drawn) {
    List<FittedTurn> turns = drawn.stream().map(FittedTurn::of).toList();
    double span = span(turns);
    List<Chart> charts = new ArrayList<>();
    for (int i = 0; i < turns.size(); i++) {
      charts.add(chart(sheet, drawn.get(i), turns.get(i), span, i + 1));
    }
    return charts;
  }

  private static Chart chart(
      Sheet sheet, Runout.Station station, FittedTurn turn, double span, int number) {
    Scale angle = Scale.showing(Unit.DEGREE, turn.angles(), FINEST_ANGLE);
    Scale length = new Scale(Unit.MICROMETRE, FINEST_LENGTH);
    return new Chart.Polar(
        sheet.chart("turn-" + number),
        caption(station),
        Saying.of("report-polar-summary", ""),
        angle,
        length,
        turn.angles(),
        turn.readings(),
        turn.gridAngles(),
        turn.gridFit(),
        turn.gridLow(),
        turn.gridHigh(),
        span,
        twin(turn, station, angle, length));
  }

  private static Saying caption(Runout.Station station) {
    OptionalDouble at = station.sweep().station();
    Arg clamping = Arg.of(station.sweep().clamping());
    return at.isPresent()
        ? Saying.of("report-polar-at", "", Arg.of(at.getAsDouble(), Unit.MILLIMETRE), clamping)
        : Saying.of("report-polar", "", clamping);
  }

  private static Table twin(FittedTurn turn, Runout.Station station, Scale angle, Scale length) {
    Samples typed = station.sweep().reading();
    Scale reading = Scale.showing(Unit.MICROMETRE, typed, 2);
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < turn.angles().size(); i++) {
      rows.add(
          Row.of(
              new Cell.Number(turn.angles().get(i), angle),
              new Cell.Number(typed.get(i), reading),
              new Cell.Number(turn.readings().get(i), length),
              new Cell.Number(turn.fit().get(i), length),
              new Cell.Number(turn.low().get(i), length),
              new Cell.Number(turn.high().get(i), length)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("angle", "reading", "from-mean", "fit", "low", "high")) {
      columns.add(Table.heading("report-column-" + name));
    }
    return Table.of(caption(station), columns, rows, Table.Kind.READINGS);
  }

  /** The largest distance from the mean circle, rounded up to a number that halves well. */
  private static double span(List<FittedTurn> turns) {
    double largest = 0;
    for (FittedTurn turn : turns) {
      largest = Math.max(largest, turn.largest());
    }
    return largest == 0 ? Unit.MICROMETRE.toSi(1) : roundUp(largest);
  }

  static double roundUp(double positive) {
    double power = Math.pow(10, Math.floor(Math.log10(positive)));
    for (double step : new double[] {1, 1.4, 2, 3, 4, 5, 6, 8}) {
      if (positive <= step * power) {
        return step * power;
      }
    }
    return 10 * power;
  }
}
