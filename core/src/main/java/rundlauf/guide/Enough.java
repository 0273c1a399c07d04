package rundlauf.guide;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
import rundlauf.reduce.growth.Growth;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;

/** Whether further readings would still better the figure that a trial is taken for. */
final class Enough {
  /** How many more are thought of. */
  private static final int MORE = 4;

  /** Below this they do not pay. Our choice: a tenth of a doubt is felt by nobody. */
  private static final double LEAST_GAIN = 0.1;

  /** Causes that average out over readings; the others are in every one of them. */
  private static final List<String> AVERAGED = List.of("scatter", "rounding", "angle-setting");

  private Enough() {}

  /**
   * A saying where four more readings would lessen the standard uncertainty by less than a tenth:
   * the part of its variance that averages out, s, falls by n/(n+4).
   *
   * @param taken how many readings the trial has; of a runout those of its last sweep count, of a
   *     side load those with load and dial where the stiffness is told, n
   */
  static Optional<Saying> of(Optional<Reduced> soFar, int taken) {
    Optional<Figure> main = soFar.flatMap(Enough::main).filter(Figure::known);
    int n = soFar.map(reduced -> behind(reduced, taken)).orElse(taken);
    if (main.isEmpty() || n == 0) {
      return Optional.empty();
    }
    double averaged = averagedShare(main.get());
    double after = Math.sqrt(1 - averaged * MORE / (n + MORE));
    return 1 - after < LEAST_GAIN
        ? Optional.of(Saying.of("guide-enough", "", Arg.of(MORE)))
        : Optional.empty();
  }

  /** How many readings the main figure is told by. */
  private static int behind(Reduced reduced, int taken) {
    if (reduced instanceof Runout runout) {
      return runout.last().sweep().reading().size();
    }
    return reduced instanceof SideLoad load ? atOnePlace(load.readings().points()) : taken;
  }

  private static int atOnePlace(List<Point> points) {
    Point first = points.stream().filter(p -> p.load() > 0).findFirst().orElse(points.get(0));
    return (int)
        points.stream()
            .filter(p -> p.place().equals(first.place()))
            .filter(p -> p.at().equals(first.at()) && p.contact().equals(first.contact()))
            .count();
  }

  private static Optional<Figure> main(Reduced reduced) {
    if (reduced instanceof Runout runout) {
      return Optional.of(runout.last().tir());
    }
    if (reduced instanceof SideLoad load) {
      return Optional.of(load.stiffness());
    }
    if (reduced instanceof Axial axial) {
      return Optional.of(axial.axialStiffness().known() ? axial.axialStiffness() : axial.endPlay());
    }
    if (reduced instanceof Growth growth) {
      return Optional.of(growth.growth());
    }
    return reduced instanceof Speed speed ? Optional.of(speed.usableMax()) : Optional.empty();
  }

  /** Of the variance, 0 to 1. */
  private static double averagedShare(Figure figure) {
    double all = 0;
    double averaged = 0;
    for (Figure.Share share : figure.budget()) {
      double square = share.u() * share.u();
      all += square;
      boolean is = AVERAGED.stream().anyMatch(share.cause().part()::startsWith);
      averaged += is ? square : 0;
    }
    return all == 0 ? 0 : averaged / all;
  }
}
