package rundlauf.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;

/** Each nuisance, switched on alone, does what its field says and no more. */
class NuisanceLawTest {
  private static final double UM = 1e-6;

  private static Samples swept(Nuisances nuisances, Holding holding, int positions) {
    Dial dial = Dial.clean(1e-9).zeroed(Dial.Zero.FIRST).with(nuisances);
    return RunoutBench.take(3, holding, RunoutPlan.oneTurn(0.01, positions), dial)
        .readings("paper", OptionalDouble.empty(), 0)
        .sweeps()
        .get(0)
        .reading();
  }

  @Test
  void driftGrowsByTheSameFromReadingToReading() {
    Samples reading = swept(Nuisances.clean().withDrift(2 * UM), Holding.clean(0, 0), 12);
    assertThat(reading.get(11) - reading.get(0)).isCloseTo(22 * UM, within(2e-9));
  }

  @Test
  void anAngleOffMovesAReadingByTheSlopeTimesTheAngleAtMost() {
    double limit = Math.toRadians(3);
    Holding holding = Holding.clean(50 * UM, Math.PI / 2);
    Samples off = swept(Nuisances.clean().withAngleError(limit), holding, 36);
    Samples right = swept(Nuisances.clean(), holding, 36);
    double most = 0;
    for (int i = 0; i < 36; i++) {
      double apart = off.get(i) - off.get(0) - (right.get(i) - right.get(0));
      most = Math.max(most, Math.abs(apart));
    }
    // source: recomputed: two readings each off by up to e · 3° = 2.62 µm
    assertThat(most).isBetween(0.5 * UM, 2 * 50 * UM * limit);
  }

  @Test
  void aStickyNeedleIsNeverFurtherOffThanItSticks() {
    Holding holding = Holding.clean(20 * UM, 1);
    Samples sticky = swept(Nuisances.clean().withStick(3 * UM), holding, 90);
    Samples free = swept(Nuisances.clean(), holding, 90);
    double most = 0;
    int still = 0;
    for (int i = 1; i < 90; i++) {
      most = Math.max(most, Math.abs(sticky.get(i) - free.get(i)));
      still += sticky.get(i) == sticky.get(i - 1) ? 1 : 0;
    }
    assertThat(most).isBetween(1.5 * UM, 3.01 * UM);
    assertThat(still).isGreaterThan(30);
  }

  @Test
  void backlashStandsTheReturnTheWidthFromTheWayOut() {
    var needle =
        new Needle(
            Dial.clean(UM).with(Nuisances.clean().withRetrace(3 * UM)),
            0,
            Stream.of(1, "backlash"));
    needle.follow(0);
    needle.follow(50 * UM);
    double out = needle.follow(60 * UM);
    needle.follow(90 * UM);
    assertThat(needle.follow(60 * UM) - out).isCloseTo(3 * UM, within(1e-12));
  }

  @Test
  void aFavouredGridTakesItsShareOfTheReadings() {
    Dial dial =
        Dial.clean(10 * UM)
            .with(Nuisances.clean().withScatter(80 * UM).withDigitPreference(0.4, 50 * UM));
    List<Long> steps =
        RunoutBench.take(3, Holding.clean(0, 0), RunoutPlan.oneTurn(0.01, 4000), dial)
            .sweeps()
            .get(0)
            .steps();
    long favoured = steps.stream().filter(s -> s % 5 == 0).count();
    // source: recomputed: 0.4 + 0.6 / 5 = 0.52, sd of a share of 4000 is 0.008
    assertThat(favoured / 4000.0).isCloseTo(0.52, within(0.032));
  }

  @Test
  void theDialsOwnErrorNeverMovesADifferenceByMoreThanItsLimit() {
    double wave = 100 * UM;
    Nuisances nuisances = Nuisances.clean().withLimitOfError(8 * UM, wave);
    double most = 0;
    for (int seed = 0; seed < 200; seed++) {
      Dial dial = Dial.clean(1e-9).with(nuisances);
      TakenRunout taken =
          RunoutBench.take(seed, Holding.clean(25 * UM, 0), RunoutPlan.oneTurn(0.01, 24), dial);
      Samples reading =
          taken.readings("paper", OptionalDouble.empty(), 0).sweeps().get(0).reading();
      double error = reading.max() - reading.min() - 50 * UM;
      most = Math.max(most, Math.abs(error));
    }
    assertThat(most).isBetween(7.5 * UM, 8.01 * UM);
  }

  @Test
  void theErrorOfTheDialIsTheSameAtEveryStationOfATrial() {
    Dial dial = Dial.clean(1e-9).with(Nuisances.clean().withLimitOfError(8 * UM, 1e-4));
    var plan = RunoutPlan.oneTurn(0.01, 24).at(0.005, 0.01, 0.02);
    var sweeps =
        RunoutBench.take(3, Holding.clean(25 * UM, 0), plan, dial)
            .readings("paper", OptionalDouble.empty(), 0)
            .sweeps();
    double first = sweeps.get(0).reading().max() - sweeps.get(0).reading().min();
    for (var sweep : sweeps) {
      assertThat(sweep.reading().max() - sweep.reading().min()).isCloseTo(first, within(2e-9));
    }
  }

  @Test
  void aLeaningPlungerReadsTooMuchAndItsCosineMendsIt() {
    Dial dial = Dial.clean(1e-9).leaning(Math.toRadians(30));
    TakenRunout taken =
        RunoutBench.take(3, Holding.clean(50 * UM, 0), RunoutPlan.oneTurn(0.01, 8), dial);
    List<Long> steps = taken.sweeps().get(0).steps();
    Samples mended = taken.readings("paper", OptionalDouble.empty(), 0).sweeps().get(0).reading();
    // source: a gauge maker's catalogue (2019) beside JIS B 7533:2015: result = reading ·
    // cos(angle), 0.87 at 30°
    assertThat(100 * UM / ((steps.get(0) - steps.get(4)) * 1e-9)).isCloseTo(0.87, within(0.005));
    assertThat(mended.max() - mended.min()).isCloseTo(100 * UM, within(3e-9));
  }

  @Test
  void clampingAnewScattersEachComponentBySoMuch() {
    Holding holding = Holding.clean(0, 0).withScatter(4 * UM, 0);
    var plan = RunoutPlan.oneTurn(0.01, 4).clampedTimes(2000);
    var taken = RunoutBench.take(3, holding, plan, Dial.clean(1e-9));
    Samples a = Samples.of(taken.sweeps().stream().map(s -> s.truth().a()).toList());
    Samples b = Samples.of(taken.sweeps().stream().map(s -> s.truth().b()).toList());
    // source: recomputed: sd of an sd from 2000 normal numbers is 1.6 %; four of them
    assertThat(a.standardDeviation()).isCloseTo(4 * UM, within(4 * UM * 0.064));
    assertThat(b.standardDeviation()).isCloseTo(4 * UM, within(4 * UM * 0.064));
  }
}
