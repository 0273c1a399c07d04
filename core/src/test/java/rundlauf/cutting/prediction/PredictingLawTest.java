package rundlauf.cutting.prediction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.cutting.prediction.PredictingCaseTest.exact;
import static rundlauf.cutting.prediction.PredictingCaseTest.limit;
import static rundlauf.cutting.prediction.PredictingCaseTest.none;
import static rundlauf.cutting.prediction.PredictingCaseTest.some;
import static rundlauf.cutting.prediction.PredictingCaseTest.wall;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Cut;
import rundlauf.character.Trait;
import rundlauf.cutting.Operation;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;

class PredictingLawTest {
  private static final Cause COMMON = Cause.normal("dial", "made");

  @Test
  void withoutDoubtThereIsNone() {
    Prediction found = new MadeTask().predicted();
    found
        .figures()
        .byPath()
        .forEach(
            (path, figure) ->
                figure.estimate().ifPresent(e -> assertThat(e.u()).as(path).isEqualTo(0)));
    assertThat(found.probability()).isEqualTo(1);
  }

  @Test
  void theDoubtOfCoefficientsScalesRigidForces() {
    MadeTask made = rigid();
    made.spread = 0.2;
    Figure peak = made.predicted().figures().at("force.peak.lateral");
    assertThat(peak.budget()).hasSize(1);
    assertThat(peak.budget().get(0).cause().part()).isEqualTo("force-coefficients");
    // log-normal: sd of the factor is √(e^s² − 1) e^(s²/2), slope by the draws
    assertThat(peak.budget().get(0).u() / peak.value()).isCloseTo(0.2, within(0.03));
    assertThat(high(peak) / peak.value()).isCloseTo(Math.exp(1.96 * 0.2), within(0.2));
    assertThat(low(peak) / peak.value()).isCloseTo(Math.exp(-1.96 * 0.2), within(0.1));
  }

  /**
   * Truths drawn from the same doubts: the interval of a prediction holds as many of them as it
   * says, on average over seeds.
   */
  @ParameterizedTest
  @CsvSource({
    "force.peak.lateral",
    "power.cutting",
    "deflection.wallError",
    "stress.peak",
    "deflection.setup",
    "chip.effectiveDiameter"
  })
  void theIntervalHoldsTheTruthAsOftenAsItSays(String path) {
    int held = 0;
    int all = 0;
    for (int seed = 1; seed <= 24; seed++) {
      Draws draws = new Draws(seed, 400);
      MadeTask made = doubtful(draws);
      Figure figure = Predicting.predict(made.task(), draws, Predicting.STATES).figures().at(path);
      Stream truth = Stream.of(seed, "truth");
      for (int i = 0; i < 20; i++) {
        double value = truth(truth).figures().at(path).value();
        held += low(figure) <= value && value <= high(figure) ? 1 : 0;
        all++;
      }
    }
    // 480 truths in 24 groups: three standard errors at 95 % are some 4 %
    assertThat((double) held / all).as(path).isBetween(0.91, 0.985);
  }

  /** Coefficients ±20 %, 12 ± 3 µm, tooth 1 anywhere, 8 ± 1 N/µm. */
  private static MadeTask doubtful(Draws draws) {
    MadeTask made = sideCut();
    made.spread = 0.2;
    made.eccentricity =
        Trait.measured(
            Measured.exact(12e-6, Unit.MICROMETRE).with(Cause.normal("e", "made"), 3e-6));
    made.firstTooth = MadeTask.anywhere(draws);
    made.stiffness =
        Trait.measured(
            Measured.exact(8e6, Unit.NEWTON_PER_MICROMETRE).with(Cause.normal("k", "made"), 1e6));
    return made;
  }

  private static Prediction truth(Stream truth) {
    MadeTask made = sideCut();
    double factor = Math.exp(0.2 * truth.gaussian());
    made.coefficients =
        new rundlauf.cutting.Coefficients.LinearEdge(
            factor * 800e6,
            factor * 200e6,
            factor * 100e6,
            factor * 10e3,
            factor * 12e3,
            factor * 1e3);
    made.eccentricity = exact(Math.max(0, 12e-6 + 3e-6 * truth.gaussian()), Unit.MICROMETRE);
    made.firstTooth = exact(2 * Math.PI * truth.uniform(), Unit.DEGREE);
    made.stiffness = exact(Math.max(1e6, 8e6 + 1e6 * truth.gaussian()), Unit.NEWTON_PER_MICROMETRE);
    return Predicting.predict(made.task(), MadeTask.DRAWS, 64);
  }

  private static MadeTask sideCut() {
    MadeTask made = new MadeTask();
    made.cut =
        new CutAsked(
            Operation.SIDE_DOWN,
            Quantity.exact(300, Unit.RPM),
            new Cut.FeedPerTooth(Quantity.exact(15e-6, Unit.MICROMETRE)),
            MadeTask.mm(0.4),
            MadeTask.mm(0.6));
    made.tilt = exact(0, Unit.MICROMETRE_PER_MILLIMETRE);
    return made;
  }

  @Test
  void theDeflectionIsFedBackFromATenthOnAndTheRigidAnswerStandsBeside() {
    MadeTask made = new MadeTask();
    Prediction soft = made.predicted();
    CutFigures beside = soft.rigid().orElseThrow();
    assertThat(soft.figures().at("chip.teethCutting").value()).isEqualTo(2);
    assertThat(beside.at("chip.teethCutting").value()).isEqualTo(1);
    // 200 MPa over 0.5 mm is 0.1 N/µm; a nose and cutter far stiffer than ten times that is rigid
    MadeTask stiff = rigid();
    Prediction rigid = stiff.predicted();
    assertThat(rigid.rigid()).isEmpty();
    rigid
        .figures()
        .byPath()
        .forEach(
            (path, figure) -> {
              if (beside.byPath().containsKey(path) && figure.known()) {
                assertThat(beside.at(path).value())
                    .as(path)
                    .isCloseTo(figure.value(), within(1e-9 * Math.abs(figure.value())));
              }
            });
  }

  /** The cut of the fixture on a nose that does not give way, with a cutter that does not bend. */
  private static MadeTask rigid() {
    MadeTask made = new MadeTask();
    made.cutter = PredictingCaseTest.cutter(3, 2, 30);
    made.stiffness = exact(1e15, Unit.NEWTON_PER_MICROMETRE);
    return made;
  }

  @Test
  void aToothPitchFurtherTheTeethChangeTheirNames() {
    MadeTask made = new MadeTask();
    MadeTask turned = new MadeTask();
    turned.firstTooth = exact(Math.toRadians(30) + Math.PI, Unit.DEGREE);
    turned.tiltAngle = exact(Math.PI, Unit.DEGREE);
    CutFigures first = made.predicted().figures();
    CutFigures second = turned.predicted().figures();
    assertThat(second.teeth().get(1).peak().value())
        .isCloseTo(first.teeth().get(0).peak().value(), within(1e-9));
    assertThat(second.at("force.peak.lateral").value())
        .isCloseTo(first.at("force.peak.lateral").value(), within(1e-3));
  }

  @Test
  void twoTraitsThatShareACauseChangeTheOdds() {
    double shared = odds(COMMON, COMMON);
    double apart = odds(COMMON, Cause.normal("lever", "made"));
    // the nose is soft where the runout is large: the two add up in the wall
    assertThat(apart).isGreaterThan(shared + 0.04);
  }

  /** Odds of a wall error, with the runout's cause and the stiffness' cause given. */
  private static double odds(Cause runout, Cause stiffness) {
    MadeTask made = sideCut();
    made.eccentricity = Trait.measured(Measured.exact(12e-6, Unit.MICROMETRE).with(runout, 4e-6));
    made.stiffness =
        Trait.measured(Measured.exact(0.35e6, Unit.NEWTON_PER_MICROMETRE).with(stiffness, 0.07e6));
    made.allowed = wall(20e-6);
    return Predicting.predict(made.task(), MadeTask.DRAWS, 400).probability();
  }

  @ParameterizedTest
  @CsvSource({
    "speed-low, 100, 1, 0",
    "speed-high, 500, 1, 0",
    "axes-feed, 300, 1, 0.005",
    "holder-speed, 300, 1, 250",
    "stress, 300, 40, 0",
    "holding-in-plane, 300, 1, 5",
    "holding-lift, 300, 1, 0.1",
    "finish, 300, 1, 1e-9",
    "wall-error, 300, 1, 1e-6"
  })
  void everyLimitFailsWhereItIsPassed(String code, double speed, double deeper, double allowed) {
    MadeTask made = new MadeTask();
    made.cut =
        new CutAsked(
            Operation.SLOT,
            Quantity.exact(speed, Unit.RPM),
            new Cut.FeedPerTooth(Quantity.exact(15e-6 * deeper, Unit.MICROMETRE)),
            MadeTask.mm(0.5),
            MadeTask.mm(3));
    made.allowed = allowed(code, allowed);
    Prediction found = made.predicted();
    assertThat(limit(found, code).judged()).isTrue();
    assertThat(limit(found, code).holds()).isFalse();
    assertThat(limit(found, code).margin().value()).isNegative();
    assertThat(found.probability()).isEqualTo(0);
    assertThat(found.cautions())
        .anyMatch(s -> s.code().startsWith("limit-fails") && s.about().equals(code));
  }

  private static Allowed allowed(String code, double value) {
    return new Allowed(
        code.equals("wall-error") ? some(value) : none(),
        code.equals("finish") ? some(value) : none(),
        code.equals("holding-in-plane") ? some(value) : none(),
        code.equals("holding-lift") ? some(value) : none(),
        code.equals("axes-feed") ? some(value) : none(),
        code.equals("holder-speed") ? some(value) : none());
  }

  @Test
  void powerIsProportionalToSpeedBelowItsOwn() {
    MadeTask made = new MadeTask();
    assertThat(made.predicted().figures().at("power.available").value())
        .isCloseTo(400 * 300.0 / 400, within(1e-9));
    made.power = exact(20, Unit.WATT);
    Prediction weak = made.predicted();
    assertThat(limit(weak, "power").holds()).isFalse();
    assertThat(limit(weak, "torque").holds()).isFalse();
  }

  @Test
  void tryingAgreesWithPredictingWhereTheStepsDoNot() {
    MadeTask made = doubtful(MadeTask.DRAWS);
    made.cutter = PredictingCaseTest.cutter(3, 2, 30); // of no edge radius, so nothing can rub
    made.allowed = wall(12e-6);
    Prediction found = Predicting.predict(made.task(), MadeTask.DRAWS, 128);
    Tried tried = Trying.of(made.task(), MadeTask.DRAWS, 128).tried(made.cut);
    assertThat(found.probability()).isLessThan(0.95);
    assertThat(tried.passes()).isFalse();
    assertThat(tried.states()).isLessThan(128);
    assertThat(tried.failures()).containsOnlyKeys("wall-error");
    made.allowed = wall(60e-6);
    assertThat(Trying.of(made.task(), MadeTask.DRAWS, 128).tried(made.cut))
        .isEqualTo(new Tried(1, 128, Map.of()));
  }

  @Test
  void anAssumedPlaceOfToothOneIsSaidBesideWhatItTouches() {
    MadeTask made = new MadeTask();
    made.firstTooth = MadeTask.anywhere(MadeTask.DRAWS);
    Prediction found = made.predicted();
    assertThat(found.assumed()).containsKeys("force.peak.lateral", "chip.perTooth[0].peak");
    assertThat(found.assumed()).doesNotContainKeys("kinematics.feed", "power.available");
    assertThat(limit(found, "stress").assumed()).isNotEmpty();
    assertThat(limit(found, "speed-low").assumed()).isEmpty();
    made.eccentricity = exact(0, Unit.MICROMETRE);
    made.tilt = exact(0, Unit.MICROMETRE_PER_MILLIMETRE);
    assertThat(made.predicted().assumed()).isEmpty();
  }

  @Test
  void whereNobodyKnowsHowTheyStandAllTeethAreAlike() {
    MadeTask made = new MadeTask();
    made.firstTooth = MadeTask.anywhere(MadeTask.DRAWS);
    CutFigures found = made.predicted().figures();
    assertThat(found.teeth().get(0).peak().value()).isEqualTo(found.teeth().get(1).peak().value());
    assertThat(found.teeth().get(0).share().value()).isCloseTo(0.5, within(1e-6));
  }

  @Test
  void typedLimitsOfCutterAndCutCount() {
    MadeTask made = rigid();
    made.cut =
        new CutAsked(
            Operation.SLOT,
            Quantity.exact(300, Unit.RPM),
            new Cut.FeedPerTooth(Quantity.exact(15e-6, Unit.MICROMETRE)),
            new Quantity(0.5e-3, 0.05e-3, Unit.MILLIMETRE),
            MadeTask.mm(3));
    Figure mean = made.predicted().figures().at("torque.mean");
    assertThat(mean.budget().get(0).cause().part()).isEqualTo("axial");
    // torque is proportional to the depth: ± 10 % rectangular
    assertThat(mean.budget().get(0).u() / mean.value())
        .isCloseTo(0.1 / Math.sqrt(3), within(0.006));
    assertThat(high(mean) / mean.value()).isBetween(1.085, 1.1001);
    assertThat(low(mean) / mean.value()).isBetween(0.8999, 0.915);
  }

  @Test
  void aNoseFarTooSoftIsSaidAndItsWallIsNotGuessed() {
    MadeTask made = new MadeTask();
    made.stiffness = exact(10e3, Unit.NEWTON_PER_MICROMETRE);
    made.cut =
        new CutAsked(
            Operation.SLOT,
            Quantity.exact(300, Unit.RPM),
            new Cut.FeedPerTooth(Quantity.exact(2e-6, Unit.MICROMETRE)),
            MadeTask.mm(2),
            MadeTask.mm(3));
    made.allowed = wall(1e-3);
    Prediction found = made.predicted();
    assertThat(found.cautions()).anyMatch(s -> s.code().equals("nose-unsettled"));
    assertThat(found.figures().at("deflection.wallError.plusY").known()).isFalse();
    assertThat(limit(found, "wall-error").judged()).isFalse();
  }

  private static double low(Figure figure) {
    return figure.estimate().orElseThrow().interval().low();
  }

  private static double high(Figure figure) {
    return figure.estimate().orElseThrow().interval().high();
  }
}
