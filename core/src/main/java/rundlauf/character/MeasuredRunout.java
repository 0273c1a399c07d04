package rundlauf.character;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Cutter;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.ScatteredVector;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.NextAxis;
import rundlauf.reduce.runout.Runout;

/**
 * How the axis stands at a cutter's tip when it is next clamped.
 *
 * @param eccentricity there
 * @param tilt its size
 * @param tiltAngle how far the eccentricity's high spot stands ahead of the tilt's
 */
record MeasuredRunout(Trait eccentricity, Trait tilt, Trait tiltAngle) {
  private static final double SAME_HEIGHT = 1e-6;

  /**
   * From the setup's latest runout trial.
   *
   * @param stickout from the nut's face to the tip
   */
  static MeasuredRunout of(SpindleResults of, Quantity stickout, Draws draws) {
    Optional<Runout> runout = of.ofSetup(Runout.class);
    if (runout.isEmpty()) {
      return missing(Saying.of("not-measured-runout", "eccentricity"));
    }
    Optional<NextAxis> axis = NextAxis.at(runout.get(), stickout.si(), draws);
    if (axis.isEmpty()) {
      Saying why = ((Missing) runout.get().nextClamping().eccentricity()).why();
      return missing(new Saying(why.code(), "eccentricity", why.args()));
    }
    return axis.get().tilt().isPresent()
        ? known(of, runout.get(), axis.get(), stickout, draws)
        : oneStation(of, runout.get(), axis.get(), stickout, draws);
  }

  private static MeasuredRunout missing(Saying why) {
    return new MeasuredRunout(
        Trait.missing(Unit.MICROMETRE, why),
        Trait.missing(Unit.MICROMETRE_PER_MILLIMETRE, why),
        Trait.missing(Unit.DEGREE, why));
  }

  private static MeasuredRunout known(
      SpindleResults of, Runout runout, NextAxis axis, Quantity stickout, Draws draws) {
    ScatteredVector tilt = axis.tilt().orElseThrow();
    ScatteredVector offset = moved(axis.offset(), tilt, stickout, of.stickout(), draws);
    Saying from = from(runout);
    return new MeasuredRunout(
        axis.scatterMeasured()
            ? Trait.measured(offset.magnitude(Unit.MICROMETRE), from)
            : Trait.assumed(offset.magnitude(Unit.MICROMETRE), scatterAssumed()),
        Trait.measured(tilt.magnitude(Unit.MICROMETRE_PER_MILLIMETRE), from),
        Trait.measured(ahead(offset.drawn(), tilt.drawn()), from));
  }

  /** A tip that may stand a little farther out or in moves along the tilt. */
  private static ScatteredVector moved(
      ScatteredVector offset, ScatteredVector tilt, Quantity stickout, Cause cause, Draws draws) {
    if (!stickout.hasLimits()) {
      return offset;
    }
    DrawnVector slope = tilt.mean();
    var effect =
        new DrawnVector.Effect(slope.a().mean() * stickout.u(), slope.b().mean() * stickout.u());
    Samples standard = cause.draws(draws);
    return new ScatteredVector(
        offset.mean().moved(cause, effect, standard),
        offset.drawn().moved(cause, effect, standard),
        offset.round());
  }

  /** The tilt is not known, so it is assumed; the offset moves with it as far as it is carried. */
  private static MeasuredRunout oneStation(
      SpindleResults of, Runout runout, NextAxis axis, Quantity stickout, Draws draws) {
    double sd = PermittedTilt.component(of.cutter().flatMap(Cutter::shank).map(Quantity::si));
    Samples zero = Samples.generate(draws.count(), i -> 0);
    Cause cause = Cause.normal("setup/" + of.setup().name(), "tilt-assumed");
    ScatteredVector tilt =
        ScatteredVector.of(new DrawnVector(zero, zero, Map.of()))
            .scattered(cause, zero.map(x -> sd), draws);
    double read = runout.nextClamping().at().orElse(0); // not said: as if at the nut
    double far = stickout.si() - read;
    ScatteredVector offset = axis.offset().plus(tilt, far);
    Saying leans = Saying.of("tilt-assumed", "tilt", Arg.about(sd, Unit.MICROMETRE_PER_MILLIMETRE));
    return new MeasuredRunout(
        oneStation(runout, axis, offset, Math.abs(far) > SAME_HEIGHT ? List.of(leans) : List.of()),
        Trait.assumed(tilt.magnitude(Unit.MICROMETRE_PER_MILLIMETRE), leans),
        Trait.assumed(ahead(offset.drawn(), tilt.drawn()), leans));
  }

  private static Trait oneStation(
      Runout runout, NextAxis axis, ScatteredVector offset, List<Saying> carriedBy) {
    Drawn size = offset.magnitude(Unit.MICROMETRE);
    List<Saying> assumed = new ArrayList<>(carriedBy);
    if (!axis.scatterMeasured()) {
      assumed.add(scatterAssumed());
    }
    return assumed.isEmpty()
        ? Trait.measured(size, from(runout))
        : new Trait(size, Origin.ASSUMED, assumed);
  }

  private static Saying from(Runout runout) {
    return Saying.of("from-trial", "eccentricity", Arg.of(runout.head().name()));
  }

  private static Saying scatterAssumed() {
    return Saying.of(
        "scatter-assumed", "eccentricity", Arg.about(NextAxis.ASSUMED_SCATTER, Unit.MICROMETRE));
  }

  /**
   * How far the offset's high spot stands ahead of the tilt's, which is counted with height above
   * the tip, toward the nut, and so has the opposite sign: {@code arg(−T) − arg(E)}. What stands
   * ahead reads highest earlier.
   *
   * @return draws unwrapped about the middle one [rad]
   */
  static Drawn ahead(DrawnVector offset, DrawnVector tilt) {
    double middle = angle(offset.a().mean(), offset.b().mean(), tilt.a().mean(), tilt.b().mean());
    double turn = 2 * Math.PI;
    double positive = middle - turn * Math.floor(middle / turn);
    Samples angles =
        Samples.generate(
            offset.count(),
            i -> {
              double one =
                  angle(offset.a().get(i), offset.b().get(i), tilt.a().get(i), tilt.b().get(i));
              return positive + Math.IEEEremainder(one - positive, turn);
            });
    return Drawn.of(Unit.DEGREE, angles, Map.of());
  }

  private static double angle(double a, double b, double ta, double tb) {
    return Math.atan2(-tb, -ta) - Math.atan2(b, a);
  }
}
