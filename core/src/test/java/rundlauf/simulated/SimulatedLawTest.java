package rundlauf.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.RunoutReadings;

/** What the paper workshop promises, so that coverage tests may rest on it. */
class SimulatedLawTest {
  private static final double UM = 1e-6;
  private static final Dial FINE = Dial.clean(1e-9);

  private static Offset fitted(RunoutReadings.Sweep sweep) {
    double[][] rows = new double[sweep.angle().size()][];
    for (int i = 0; i < rows.length; i++) {
      double theta = sweep.angle().get(i);
      rows[i] = new double[] {1, Math.cos(theta), Math.sin(theta)};
    }
    Samples fit = LeastSquares.fit(rows, sweep.reading()).coefficients();
    return new Offset(fit.get(1), fit.get(2));
  }

  private static RunoutReadings readings(TakenRunout taken) {
    return taken.readings("paper", OptionalDouble.empty(), 0);
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 5, 7, 8, 24})
  void withoutNuisanceTheFirstHarmonicIsTheTruth(int positions) {
    TakenRunout taken =
        RunoutBench.take(
            1, Holding.clean(23 * UM, 1.1), RunoutPlan.oneTurn(0.005, positions), FINE);
    Offset found = fitted(readings(taken).sweeps().get(0));
    assertThat(found.amplitude()).isCloseTo(23 * UM, within(2e-9));
    assertThat(found.highSpot()).isCloseTo(1.1, within(1e-4));
  }

  @Test
  void aPartTurnedForwardReadsHighestEarlier() {
    var holding = new Holding(Part.TRUE, Part.offset(20 * UM, 2.0), Part.TRUE, List.of(), 0, 0);
    var plan = RunoutPlan.oneTurn(0.005, 12).clamped(new RunoutPlan.Clamping(Math.PI / 2, 0));
    Offset found = fitted(readings(RunoutBench.take(1, holding, plan, FINE)).sweeps().get(0));
    assertThat(found.highSpot()).isCloseTo(2.0 - Math.PI / 2, within(1e-4));
  }

  @Test
  void fourPositionsReadAThreeLobedPinAsEccentricity() {
    Holding pin = Holding.clean(0, 0).with(new Lobe(3, 5 * UM, 0));
    TakenRunout four = RunoutBench.take(1, pin, RunoutPlan.oneTurn(0.005, 4), FINE);
    TakenRunout five = RunoutBench.take(1, pin, RunoutPlan.oneTurn(0.005, 5), FINE);
    assertThat(fitted(readings(four).sweeps().get(0)).amplitude()).isCloseTo(5 * UM, within(2e-9));
    assertThat(fitted(readings(five).sweeps().get(0)).amplitude()).isLessThan(2e-9);
  }

  @Test
  void retraceTurnsTheHighSpotLater() {
    Dial dial = FINE.with(Nuisances.clean().withRetrace(3 * UM));
    var plan = RunoutPlan.oneTurn(0.005, 72).forTurns(4);
    Offset found =
        fitted(
            readings(RunoutBench.take(1, Holding.clean(20 * UM, 1), plan, dial)).sweeps().get(0));
    double late = Math.toDegrees(found.highSpot() - 1);
    // source: recomputed: first harmonic of a backlash of width b lags by about 2b/(πe) at small b
    assertThat(late).isBetween(3.5, 6.0);
  }

  @Test
  void anUnnoticedSlipIsInTheReadings() {
    Dial dial = Dial.clean(10 * UM).with(Nuisances.clean().withSlip(5, 100 * UM));
    TakenRunout taken =
        RunoutBench.take(1, Holding.clean(0, 0), RunoutPlan.oneTurn(0.005, 8), dial);
    List<Long> steps = taken.sweeps().get(0).steps();
    assertThat(steps.get(5) - steps.get(4)).isEqualTo(10);
  }

  @Test
  void zeroOnTheLowestReadsNothingBelow() {
    Dial dial = Dial.clean(10 * UM).zeroed(Dial.Zero.LOWEST);
    TakenRunout taken =
        RunoutBench.take(1, Holding.clean(33 * UM, 2), RunoutPlan.oneTurn(0.005, 8), dial);
    Samples reading = readings(taken).sweeps().get(0).reading();
    assertThat(reading.min()).isZero();
    // 33 µm · 2 · cos(135° − 2 rad) = 61.9 µm
    assertThat(reading.max()).isCloseTo(60 * UM, within(1e-12));
  }

  @Test
  void theScatterOfManyReadingsIsTheOneAskedFor() {
    Dial dial = FINE.with(Nuisances.clean().withScatter(2 * UM));
    TakenRunout taken =
        RunoutBench.take(1, Holding.clean(0, 0), RunoutPlan.oneTurn(0.005, 4000), dial);
    double sd = readings(taken).sweeps().get(0).reading().standardDeviation();
    // source: recomputed: sd of an sd from 4000 normal numbers is 1.1 %; four of them
    assertThat(sd).isCloseTo(2 * UM, within(2 * UM * 0.045));
  }

  @Test
  void withoutNuisanceTheLoadLineHasTheTrueSlope() {
    Shank shank = Shank.clean(3e-3, 580e9, 0.018);
    Nose nose = Nose.clean(0.4e6);
    TakenLoad taken =
        LoadBench.take(1, nose, shank, Lever.exact(5), LoadPlan.oneSided(4).andBack(), FINE);
    List<LoadReadings.Point> points = taken.readings("paper").points();
    double slope =
        (points.get(4).reading() - points.get(0).reading())
            / (points.get(4).load() - points.get(0).load());
    assertThat(slope).isCloseTo(1 / taken.stiffness(), within(1e-9));
  }

  @Test
  void theShankBendsAsTheBookSays() {
    // source: from memory: F L³ / (3 E I), I = π d⁴ / 64; 3 mm carbide 18 mm out: 0.843 µm/N,
    // and shear adds under 2 %
    double compliance = Shank.clean(3e-3, 580e9, 0.018).compliance();
    assertThat(compliance / 0.843e-6).isBetween(1.0, 1.02);
  }

  @Test
  void oppositePushesStandThePlayApart() {
    Nose nose = Nose.clean(0.5e6).withPlay(12 * UM, 1);
    Shank stiff = Shank.clean(20e-3, 580e9, 0.001);
    TakenLoad taken =
        LoadBench.take(1, nose, stiff, Lever.exact(5), LoadPlan.oneSided(3).bothWays(), FINE);
    List<LoadReadings.Point> p = taken.readings("paper").points();
    double right = p.get(1).reading() - (p.get(3).reading() - p.get(1).reading()) / 2;
    double left = p.get(5).reading() - (p.get(7).reading() - p.get(5).reading()) / 2;
    assertThat(right - left).isCloseTo(12 * UM, within(5e-9));
  }

  @Test
  void fallingLoadStandsTheLoopAboveRising() {
    Nose nose = Nose.clean(0.5e6).withHysteresis(3 * UM);
    Shank stiff = Shank.clean(20e-3, 580e9, 0.001);
    TakenLoad taken =
        LoadBench.take(1, nose, stiff, Lever.exact(5), LoadPlan.oneSided(4).andBack(), FINE);
    List<LoadReadings.Point> p = taken.readings("paper").points();
    assertThat(p.get(6).reading() - p.get(2).reading()).isCloseTo(3 * UM, within(3e-9));
  }

  @Test
  void aLeverErrsWithinItsLimitsAndNoFurther() {
    var lever = new Lever(0.75, 0.001, 0.18, 0.0005, 0.06, 0.0005);
    double most = (0.751 / 0.75) * (0.1805 / 0.18) / (0.0595 / 0.06);
    double least = (0.749 / 0.75) * (0.1795 / 0.18) / (0.0605 / 0.06);
    var stream = Stream.of(5, "lever");
    for (int i = 0; i < 200; i++) {
      assertThat(lever.trueScale(stream)).isBetween(least, most);
    }
  }

  @Test
  void aDriveStandsStillThenRisesThenStays() {
    Drive drive = Drive.straight(20, 50, 80, 200).bowed(0.1);
    assertThat(List.of(drive.speed(19), drive.speed(20), drive.speed(80), drive.speed(100)))
        .containsExactly(0.0, 50.0, 200.0, 200.0);
    assertThat(drive.speed(50)).isCloseTo(125 + 15, within(1e-9));
  }

  @Test
  void theSameSeedGivesTheSameReadingsAndAnotherOthers() {
    Dial dial = Dial.clean(10 * UM).with(Nuisances.clean().withScatter(8 * UM));
    Holding holding = Holding.clean(40 * UM, 1);
    RunoutPlan plan = RunoutPlan.oneTurn(0.005, 12);
    TakenRunout first = RunoutBench.take(7, holding, plan, dial);
    assertThat(RunoutBench.take(7, holding, plan, dial)).isEqualTo(first);
    assertThat(RunoutBench.take(8, holding, plan, dial)).isNotEqualTo(first);
  }
}
