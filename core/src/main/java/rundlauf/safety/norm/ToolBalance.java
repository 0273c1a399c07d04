package rundlauf.safety.norm;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rundlauf.bench.Cutter;
import rundlauf.bench.CutterMass;
import rundlauf.bench.Setup;
import rundlauf.bench.Span;
import rundlauf.bench.Spindle;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.runout.Runout;

/**
 * Whether what a tool off the axis adds leaves the spindle within the balance grade of machine-tool
 * drives. What the spindle itself brings is not measured here, so this is no grade of it.
 */
final class ToolBalance {
  static final String NORM = "ISO 21940-11 G2.5";

  /**
   * Of machine-tool drives [m/s]; ISO 1940-1's table of grades, as quoted in a text on balancing.
   */
  private static final double GRADE = 2.5e-3;

  private ToolBalance() {}

  /**
   * The verdict: what the tool adds as a specific unbalance, {@code m_tool e / m_rotor}, against
   * {@code e_per = G / (2 π n)} at the fastest speed of the label.
   *
   * @param cutter as it stands in the setup
   * @return not decided where the mass of all that turns, the label's speed, the cutter's sizes or
   *     the eccentricity is not known
   * @see "ISO 21940-11, as quoted in a text on balancing; docs/methods/norms.md"
   */
  static NormVerdict of(Spindle spindle, Setup setup, Cutter cutter, Runout runout) {
    Optional<Quantity> top = spindle.labelSpeed().map(Span::max);
    Optional<Saying> none = Optional.empty();
    Optional<Saying> lacking =
        none.or(() -> absent(spindle.rotorMass(), "norm-balance-no-rotor-mass", spindle.name()))
            .or(() -> absent(top, "norm-balance-no-speed", spindle.name()))
            .or(() -> absent(mass(setup, cutter), "norm-balance-no-cutter", cutter.name()));
    Figure eccentricity = eccentricity(runout);
    if (lacking.isEmpty() && eccentricity instanceof Missing missing) {
      lacking = Optional.of(missing.why());
    }
    if (lacking.isPresent()) {
      Figure limit = new Missing(Unit.MICROMETRE, lacking.get());
      return Verdicts.undecided(
          NORM, spindle.name(), limit, Unit.MICROMETRE, List.of(lacking.get()));
    }
    Quantity rotor = spindle.rotorMass().orElseThrow();
    double fastest = top.orElseThrow().si();
    Figure added =
        shared(
            eccentricity,
            mass(setup, cutter).orElseThrow(),
            rotor.measured(Cause.rectangular("spindle/" + spindle.name(), "rotor-mass")));
    double limit = permitted(fastest);
    double within = Conformity.probabilityWithin(added, limit);
    List<Saying> said =
        List.of(
            words(within, cutter.name(), spindle.name()),
            Saying.of("norm-balance-of-tool", NORM, Arg.of(fastest, Unit.RPM)));
    return Verdicts.decided(NORM, spindle.name(), limit, added, within, said);
  }

  /** Of the tool's share, which alone was judged: the spindle's own is not known. */
  private static Saying words(double within, String cutter, String spindle) {
    return switch (Conformity.outcome(within)) {
      case PROVEN ->
          Saying.of(
              "norm-balance-proven",
              NORM,
              Arg.of(cutter),
              Arg.of(spindle),
              Verdicts.atLeast(within));
      case DISPROVEN ->
          Saying.of(
              "norm-balance-disproven",
              NORM,
              Arg.of(cutter),
              Arg.of(spindle),
              Verdicts.atLeast(1 - within));
      default ->
          Saying.of(
              "norm-balance-not-proven",
              NORM,
              Arg.of(cutter),
              Arg.of(spindle),
              Arg.of(Math.round(100 * within)));
    };
  }

  /**
   * Largest specific unbalance of the grade.
   *
   * @param speed turns per second, over 0
   * @return e_per [m], equal to a residual unbalance over the rotor's mass
   * @see "ISO 21940-11: e_per Ω = G"
   */
  static double permitted(double speed) {
    return GRADE / (2 * Math.PI * speed);
  }

  private static Optional<Saying> absent(Optional<?> value, String code, String name) {
    return value.isPresent()
        ? Optional.empty()
        : Optional.of(new Saying(code, NORM, List.of(Arg.of(name))));
  }

  /** Where the tool will stand when it is clamped next, else where it stood. */
  private static Figure eccentricity(Runout runout) {
    Figure next = runout.nextClamping().eccentricity();
    return next.known() ? next : runout.axis().tip().eccentricity();
  }

  private static Optional<Double> mass(Setup setup, Cutter cutter) {
    Optional<Quantity> stickout = setup.stickout().or(cutter::stickout);
    boolean known =
        stickout.isPresent()
            && cutter.diameter().isPresent()
            && cutter.shank().isPresent()
            && cutter.fluteLength().isPresent()
            && cutter.modulus().isPresent();
    return known
        ? Optional.of(
            CutterMass.inFront(
                cutter.diameter().get().si(),
                cutter.fluteLength().get().si(),
                cutter.shank().get().si(),
                stickout.get().si(),
                CutterMass.density(cutter.modulus().get().si())))
        : Optional.empty();
  }

  /** Tool's mass times its eccentricity over the rotor's mass, the doubt of both in it. */
  private static Figure shared(Figure eccentricity, double tool, Measured rotor) {
    ToDoubleFunction<double[]> share = v -> tool * v[0] / v[1];
    if (!(eccentricity instanceof Drawn drawn)) {
      return Measured.through(share, eccentricity.unit(), (Measured) eccentricity, rotor);
    }
    Drawn known = drawn.times(tool / rotor.value());
    if (rotor.u() == 0) {
      return known;
    }
    var asked = new Draws(Draws.DEFAULT_SEED, drawn.weights().size());
    Drawn both = Drawn.through(share, drawn.unit(), asked, drawn, rotor);
    Interval narrow = known.estimate().orElseThrow().interval();
    Interval wide = both.estimate().orElseThrow().interval();
    // Never narrower than without the rotor's limits: they add doubt and take none.
    var hull =
        new Interval(
            Math.min(narrow.low(), wide.low()), Math.max(narrow.high(), wide.high()), wide.level());
    return Drawn.of(
        both.unit(), both.draws(asked), both.weights(), known.value(), hull, both.effects());
  }
}
