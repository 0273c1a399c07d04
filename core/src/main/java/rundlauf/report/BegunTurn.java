package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.report.Table.Row;

/** The readings of a sweep that does not bear a circle yet, as dots round the turn. */
final class BegunTurn {
  private static final int FINEST_ANGLE = 1;
  private static final int FINEST_LENGTH = 2;

  private BegunTurn() {}

  /** Drawn from the middle between the lowest and the highest of them: more is not known yet. */
  static Chart of(RunoutReadings.Sweep sweep, String id) {
    Samples read = sweep.reading();
    double low = read.stream().min().orElse(0);
    double high = read.stream().max().orElse(0);
    Scale angle = Scale.showing(Unit.DEGREE, sweep.angle(), FINEST_ANGLE);
    Scale length = new Scale(Unit.MICROMETRE, 1);
    double middle = (low + high) / 2;
    double half = (high - low) / 2;
    return new Chart.Polar(
        id,
        caption(sweep),
        Saying.of("report-begun-summary", "", Arg.of(read.size())),
        angle,
        length,
        sweep.angle(),
        Samples.of(read.stream().map(r -> r - middle).boxed().toList()),
        Samples.of(),
        Samples.of(),
        Samples.of(),
        Samples.of(),
        half > 0 ? PolarCharts.roundUp(half) : Unit.MICROMETRE.toSi(1),
        twin(sweep, angle));
  }

  private static Saying caption(RunoutReadings.Sweep sweep) {
    OptionalDouble at = sweep.station();
    Arg clamping = Arg.of(sweep.clamping());
    return at.isPresent()
        ? Saying.of("report-begun-at", "", Arg.of(at.getAsDouble(), Unit.MILLIMETRE), clamping)
        : Saying.of("report-begun", "", clamping);
  }

  private static Table twin(RunoutReadings.Sweep sweep, Scale angle) {
    Scale length = Scale.showing(Unit.MICROMETRE, sweep.reading(), FINEST_LENGTH);
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < sweep.reading().size(); i++) {
      rows.add(
          Row.of(
              new Cell.Number(sweep.angle().get(i), angle),
              new Cell.Number(sweep.reading().get(i), length)));
    }
    List<Cell> columns =
        List.of(Table.heading("report-column-angle"), Table.heading("report-column-reading"));
    return Table.of(caption(sweep), columns, rows, Table.Kind.READINGS);
  }
}
