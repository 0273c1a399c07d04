package rundlauf.cutting.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.CaseTable;
import rundlauf.bench.Cut;
import rundlauf.character.Trait;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Operation;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

class PredictingCaseTest {
  private static final CaseTable RUNOUT = CaseTable.read("cutting/forces_runout");
  private static final CaseTable KIENZLE = CaseTable.read("cutting/kienzle_milling_examples");

  static IntStream runouts() {
    return IntStream.range(0, RUNOUT.rows().size());
  }

  static IntStream powers() {
    return IntStream.range(0, KIENZLE.rows().size());
  }

  @ParameterizedTest
  @MethodSource("runouts")
  void aSlotWithRunout(int row) {
    MadeTask made = slotOf6mm();
    made.eccentricity = exact(RUNOUT.number(row, "rho_mm") * 1e-3, Unit.MICROMETRE);
    made.firstTooth = exact(Math.toRadians(RUNOUT.number(row, "lambda_deg")), Unit.DEGREE);
    CutFigures found = made.predicted().figures();
    // source: recomputed: references, look-back model with 300 slices and 1440 angles, and surface
    // recession; cases/cutting/forces_runout.csv
    assertThat(found.at("force.mean.x").value())
        .isCloseTo(RUNOUT.number(row, "Fx_avg_N"), within(0.05));
    assertThat(found.at("force.mean.y").value())
        .isCloseTo(RUNOUT.number(row, "Fy_avg_N"), within(0.05));
    assertThat(found.at("force.mean.z").value())
        .isCloseTo(RUNOUT.number(row, "Fz_avg_N"), within(0.05));
    double peak = RUNOUT.number(row, "Fxy_max_N");
    assertThat(found.at("force.peak.lateral").value()).isCloseTo(peak, within(0.006 * peak));
    assertThat(found.teeth().get(0).peak().value())
        .isCloseTo(RUNOUT.number(row, "hmax_tooth1_mm") * 1e-3, within(1e-7));
    assertThat(found.teeth().get(1).peak().value())
        .isCloseTo(RUNOUT.number(row, "hmax_tooth2_mm") * 1e-3, within(1e-7));
  }

  @Test
  void torqueAndPowerOfTheFirstForceExample() {
    MadeTask made = slotOf6mm();
    made.cut =
        new CutAsked(
            Operation.SLOT,
            Quantity.exact(10_000 / 60.0, Unit.RPM),
            new Cut.FeedRate(Quantity.exact(1e-3 / 60 * 1000, Unit.MILLIMETRE_PER_MINUTE)),
            MadeTask.mm(3),
            MadeTask.mm(6));
    CutFigures found = made.predicted().figures();
    // source: recomputed: references 3.4, row 1: 99.2561 N x 3 mm = 0.29777 N m, at 10 000 rpm
    // 311.8
    // W; feed 10 000 x 2 x 0.05 mm = 1000 mm/min
    assertThat(found.at("torque.mean").value()).isCloseTo(0.29777, within(2e-5));
    assertThat(found.at("power.cutting").value()).isCloseTo(311.8, within(0.1));
    // source: from memory, elementary: vc = pi D n, Q = ae ap vf
    assertThat(found.at("kinematics.cuttingSpeed").value())
        .isCloseTo(Math.PI * 6e-3 * 10_000 / 60, within(1e-9));
    assertThat(found.at("kinematics.removalRate").value())
        .isCloseTo(6e-3 * 3e-3 / 60, within(1e-15));
  }

  @ParameterizedTest
  @MethodSource("powers")
  void powerByKienzle(int row) {
    MadeTask made = new MadeTask();
    double d = KIENZLE.number(row, "D_mm");
    double ae = KIENZLE.number(row, "ae_mm");
    made.cutter = cutter(d, (int) KIENZLE.number(row, "z"), 0);
    made.coefficients =
        new Coefficients.Kienzle(
            KIENZLE.number(row, "kc11_N_mm2") * 1e6, KIENZLE.number(row, "mc"), 0.4, 0.2, true);
    made.eccentricity = exact(0, Unit.MICROMETRE);
    made.tilt = exact(0, Unit.MICROMETRE_PER_MILLIMETRE);
    made.stiffness = exact(1e15, Unit.NEWTON_PER_MICROMETRE);
    made.cut =
        new CutAsked(
            ae == d ? Operation.SLOT : Operation.SIDE_UP,
            Quantity.exact(KIENZLE.number(row, "n_rpm") / 60, Unit.RPM),
            new Cut.FeedPerTooth(
                Quantity.exact(KIENZLE.number(row, "fz_mm") * 1e-3, Unit.MICROMETRE)),
            MadeTask.mm(KIENZLE.number(row, "ap_mm")),
            MadeTask.mm(ae));
    double exact = KIENZLE.number(row, "P_exact_kW") * 1e3;
    // source: recomputed: references 6, exact integral of (fz sin phi)^(1-mc), two quadratures
    // within 4e-6; cases/cutting/kienzle_milling_examples.csv
    assertThat(made.predicted().figures().at("power.cutting").value())
        .isCloseTo(exact, within(5e-4 * exact));
  }

  @Test
  void whatIsNotKnownIsMissingWithItsReason() {
    MadeTask made = new MadeTask();
    made.eccentricity = Trait.missing(Unit.MICROMETRE, Saying.of("no-runout", "eccentricity"));
    Prediction found = made.predicted();
    assertThat(found.figures().at("force.peak.lateral").known()).isFalse();
    assertThat(found.figures().at("deflection.wallError.plusY").known()).isFalse();
    assertThat(found.figures().teeth().get(0).peak().known()).isFalse();
    assertThat(found.figures().at("kinematics.feed").value()).isCloseTo(9e-3, within(1e-12));
    assertThat(found.turn()).isEmpty();
    assertThat(limit(found, "stress").why().code()).isEqualTo("no-runout");
    assertThat(found.covers()).containsExactly("speed-low", "speed-high");

    made = new MadeTask();
    made.stiffness =
        Trait.missing(Unit.NEWTON_PER_MICROMETRE, Saying.of("no-stiffness", "stiffness"));
    made.allowed = wall(50e-6);
    found = made.predicted();
    assertThat(found.figures().at("deflection.setup").known()).isFalse();
    assertThat(found.figures().at("deflection.cutter").known()).isTrue();
    assertThat(found.rigid()).isEmpty();
    assertThat(limit(found, "wall-error").judged()).isFalse();
    assertThat(limit(found, "wall-error").why().code()).isEqualTo("no-stiffness");
  }

  @Test
  void coefficientsWithoutAxialPartGiveNoPull() {
    MadeTask made = new MadeTask();
    made.coefficients = Coefficients.LinearEdge.inPlane(800e6, 200e6, 10e3, 12e3);
    made.allowed =
        new Allowed(none(), none(), java.util.OptionalDouble.of(30), some(5), none(), none());
    Prediction found = made.predicted();
    assertThat(found.figures().at("force.peak.z").known()).isFalse();
    assertThat(limit(found, "holding-lift").why().code()).isEqualTo("axial-coefficients-unknown");
    assertThat(limit(found, "holding-in-plane").holds()).isTrue();
  }

  private static MadeTask slotOf6mm() {
    MadeTask made = new MadeTask();
    made.cutter = cutter(6, 2, 30);
    made.coefficients = new Coefficients.LinearEdge(631e6, 99e6, 273e6, 13e3, 10e3, 2.8e3);
    made.eccentricity = exact(0, Unit.MICROMETRE);
    made.tilt = exact(0, Unit.MICROMETRE_PER_MILLIMETRE);
    made.stiffness = exact(1e15, Unit.NEWTON_PER_MICROMETRE);
    made.cut =
        new CutAsked(
            Operation.SLOT,
            Quantity.exact(10_000 / 60.0, Unit.RPM),
            new Cut.FeedPerTooth(Quantity.exact(50e-6, Unit.MICROMETRE)),
            MadeTask.mm(3),
            MadeTask.mm(6));
    return made;
  }

  /** A cutter that does not bend. */
  static CutterInUse cutter(double diameter, int teeth, double helix) {
    return new CutterInUse(
        "",
        Optional.empty(),
        MadeTask.mm(diameter),
        teeth,
        Quantity.exact(Math.toRadians(helix), Unit.DEGREE),
        MadeTask.mm(12),
        MadeTask.mm(30),
        MadeTask.mm(diameter),
        Quantity.exact(1e18, Unit.GIGAPASCAL),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Trait exact(double si, Unit unit) {
    return Trait.entered(Measured.exact(si, unit));
  }

  static Allowed wall(double most) {
    return new Allowed(some(most), none(), none(), none(), none(), none());
  }

  static java.util.OptionalDouble some(double value) {
    return java.util.OptionalDouble.of(value);
  }

  static java.util.OptionalDouble none() {
    return java.util.OptionalDouble.empty();
  }

  static Limit limit(Prediction found, String code) {
    return found.limits().stream().filter(l -> l.code().equals(code)).findFirst().orElseThrow();
  }
}
