package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Interval;
import rundlauf.reduce.runout.Runout;

/**
 * A sweep about its mean circle: readings, fitted curve and the band that holds its once-a-turn
 * part.
 *
 * @param angles of the readings within one turn, rad
 * @param readings m from the mean circle
 * @param fit the curve at the readings' angles
 * @param low the band's lower edge there
 * @param high its upper edge
 * @param gridAngles round the whole turn, rad, the first again at the end
 */
record FittedTurn(
    Samples angles,
    Samples readings,
    Samples fit,
    Samples low,
    Samples high,
    Samples gridAngles,
    Samples gridFit,
    Samples gridLow,
    Samples gridHigh) {
  /** Our choice: a point every 5 degrees draws smooth up to the harmonics a sweep can bear. */
  private static final int GRID = 72;

  private static final double TURN = 2 * Math.PI;

  static FittedTurn of(Runout.Station station) {
    DrawnVector vector = station.vector().orElseThrow();
    Samples curve = station.curve();
    Samples angles = station.sweep().angle().map(FittedTurn::withinTurn);
    Samples grid = Samples.generate(GRID + 1, i -> TURN * i / GRID);
    List<WeightedSamples> atAngles = spread(vector, angles);
    List<WeightedSamples> atGrid = spread(vector, grid);
    return new FittedTurn(
        angles,
        station.sweep().reading().map(y -> y - curve.get(0)),
        angles.map(angle -> harmonics(station, angle, 0)),
        edge(station, angles, atAngles, tail()),
        edge(station, angles, atAngles, 1 - tail()),
        grid,
        grid.map(angle -> harmonics(station, angle, 0)),
        edge(station, grid, atGrid, tail()),
        edge(station, grid, atGrid, 1 - tail()));
  }

  /** The largest distance from the mean circle of anything drawn. */
  double largest() {
    double largest = 0;
    for (Samples row : new Samples[] {readings, fit, low, high, gridFit, gridLow, gridHigh}) {
      largest = Math.max(largest, row.stream().map(Math::abs).max().orElse(0));
    }
    return largest;
  }

  private static double tail() {
    return (1 - Interval.LEVEL) / 2;
  }

  private static double withinTurn(double angle) {
    double part = angle % TURN;
    return part < 0 ? part + TURN : part;
  }

  /** The fitted curve without its mean, from its {@code first}-th order on. */
  private static double harmonics(Runout.Station station, double angle, int first) {
    double sum = 0;
    for (int k = first; k < station.orders().size(); k++) {
      double at = station.orders().get(k) * angle;
      sum += station.curve().get(2 * k + 1) * Math.cos(at);
      sum += station.curve().get(2 * k + 2) * Math.sin(at);
    }
    return sum;
  }

  /** The once-a-turn part at each angle, over its draws. */
  private static List<WeightedSamples> spread(DrawnVector e, Samples angles) {
    List<WeightedSamples> all = new ArrayList<>();
    for (int k = 0; k < angles.size(); k++) {
      double cos = Math.cos(angles.get(k));
      double sin = Math.sin(angles.get(k));
      Samples draws = Samples.generate(e.a().size(), i -> e.a().get(i) * cos + e.b().get(i) * sin);
      all.add(WeightedSamples.of(draws));
    }
    return all;
  }

  /** A quantile of the once-a-turn part, carried by the higher harmonics. */
  private static Samples edge(
      Runout.Station station, Samples angles, List<WeightedSamples> spread, double p) {
    return Samples.generate(
        angles.size(), i -> spread.get(i).quantile(p) + harmonics(station, angles.get(i), 1));
  }
}
