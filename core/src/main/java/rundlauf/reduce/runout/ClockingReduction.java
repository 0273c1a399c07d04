package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.DrawnVector.Effect;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.ScatteredVector;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking.Standing;
import rundlauf.reduce.runout.PartsDesign.Body;

/** The clock angles of collet and shank that leave least of their eccentricities together. */
final class ClockingReduction {
  /** Whole degrees: nobody sets a mark closer; our choice. */
  private static final double STEP = Unit.DEGREE.toSi(1);

  /** Two ways are as good when the doubts of what they leave differ by less, relatively. */
  private static final double SAME = 1e-6;

  private final PartsFit fit;
  private final String file;
  private final double angleLimit;
  private final Draws draws;

  private ClockingReduction(PartsFit fit, String file, double angleLimit, Draws draws) {
    this.fit = fit;
    this.file = file;
    this.angleLimit = angleLimit;
    this.draws = draws;
  }

  /** Why there is none, for want of parts or of vectors. */
  static BestClocking missing(Saying why) {
    var none = OptionalDouble.empty();
    var gone = new Missing(Unit.MICROMETRE, why);
    return new BestClocking(none, none, none, gone, gone);
  }

  /**
   * The best clock angles at the height of the fit.
   *
   * @param file begins the ids of the causes
   * @param angleLimit how well marks are set: half-width of a rectangular distribution [rad]
   * @return angles in whole degrees; tir as a prediction of the next clamping so set, beside that
   *     of clamping anew as in the first clamping
   */
  static BestClocking reduce(PartsFit fit, String file, double angleLimit, Draws draws) {
    if (fit.design().bodies().size() == 1) {
      return missing(Saying.of("parts-not-told-apart", "bestClocking"));
    }
    return new ClockingReduction(fit, file, angleLimit, draws).best();
  }

  private BestClocking best() {
    Clock clock = chosen();
    Clock first = fit.design().clocks().get(0);
    return new BestClocking(
        fit.clampings().height(),
        typed(PartsDesign.COLLET, clock.collet(), fit.clampings().colletMarked()),
        typed(PartsDesign.SHANK, clock.shank(), fit.clampings().shankMarked()),
        tir(clock),
        tir(first),
        new BestClocking.Marks(
            typed(PartsDesign.COLLET, first.collet(), fit.clampings().colletMarked()),
            typed(PartsDesign.SHANK, first.shank(), fit.clampings().shankMarked())),
        standings(first, clock));
  }

  private List<Standing> standings(Clock first, Clock set) {
    List<Standing> standings = new ArrayList<>();
    for (int k = 0; k < fit.design().bodies().size(); k++) {
      String name = fit.design().bodies().get(k).name();
      standings.add(new Standing(name, fit.turned(k, first), fit.turned(k, set)));
    }
    return standings;
  }

  /** A part that was never turned keeps its place, and has no angle where it has no mark. */
  private OptionalDouble typed(String part, double angle, boolean marked) {
    boolean still = fit.design().bodies().get(0).has(part);
    return still && !marked ? OptionalDouble.empty() : OptionalDouble.of(angle);
  }

  private Clock chosen() {
    List<Clock> ways = ways();
    Clock best = ways.get(0);
    for (Clock way : ways) {
      if (doubt(way) < doubt(best) * (1 - SAME)) {
        best = way;
      }
    }
    return best;
  }

  private List<Clock> ways() {
    List<Body> bodies = fit.design().bodies();
    double[] still = mean(0);
    List<Clock> ways = new ArrayList<>();
    if (bodies.size() == 2) {
      double turn =
          ClockTriangle.opposite(ClockTriangle.direction(still), ClockTriangle.direction(mean(1)));
      ways.add(clock(List.of(bodies.get(1)), rounded(turn)));
      return ways;
    }
    for (double[] turns : ClockTriangle.turns(still, mean(1), mean(2))) {
      ways.add(clock(bodies.subList(1, 3), rounded(turns[0]), rounded(turns[1])));
    }
    return ways;
  }

  private double[] mean(int body) {
    DrawnVector vector = fit.body(body);
    return new double[] {vector.a().mean(), vector.b().mean()};
  }

  private Clock clock(List<Body> turned, double... turns) {
    Clock first = fit.design().clocks().get(0);
    double collet = first.collet();
    double shank = first.shank();
    for (int k = 0; k < turns.length; k++) {
      Body body = turned.get(k);
      collet = body.has(PartsDesign.COLLET) ? turns[k] : collet;
      shank = body.has(PartsDesign.SHANK) ? rounded(turns[k] + body.offset()) : shank;
    }
    return new Clock(collet, shank);
  }

  private static double rounded(double angle) {
    double degrees = Math.rint(angle / STEP);
    return (degrees - 360 * Math.floor(degrees / 360)) * STEP;
  }

  private double doubt(Clock clock) {
    DrawnVector sum = fit.at(clock);
    return Math.hypot(sum.a().standardDeviation(), sum.b().standardDeviation());
  }

  /** What clamping anew with the parts standing so will give. */
  private Drawn tir(Clock clock) {
    DrawnVector sum = fit.at(clock);
    for (int k = 1; k < fit.design().bodies().size(); k++) {
      sum = set(sum, k, clock);
    }
    Samples sds = fit.scatter().draws();
    return ScatteredVector.of(sum)
        .scattered(fit.scatter().cause(file), sds, draws)
        .magnitude(Unit.MICROMETRE)
        .times(2);
  }

  /** A mark set a little off turns that part's share. */
  private DrawnVector set(DrawnVector sum, int body, Clock clock) {
    Body turned = fit.design().bodies().get(body);
    double[] part = mean(body);
    double spot = ClockTriangle.direction(part) - turned.turned(clock) - Math.PI / 2;
    double u = ClockTriangle.length(part) * angleLimit / Math.sqrt(3);
    Cause cause =
        turned.has(PartsDesign.COLLET)
            ? Cause.rectangular(file, "clock-collet")
            : Cause.rectangular(file, "clock-shank");
    return sum.moved(cause, new Effect(u * Math.cos(spot), u * Math.sin(spot)), cause.draws(draws));
  }
}
