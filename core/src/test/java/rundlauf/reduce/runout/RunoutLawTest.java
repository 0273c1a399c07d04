package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Work;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.RunoutReadings.Sweep;
import rundlauf.readings.TrialHead;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Lobe;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;

class RunoutLawTest {
  private static final double UM = 1e-6;
  private static final OptionalDouble TIP = OptionalDouble.of(28e-3);

  private static Runout reduce(RunoutReadings readings) {
    return RunoutReduction.reduce(readings, Draws.DEFAULT, Work.sequential());
  }

  /** Two stations of a tilted axis, eight positions each, an honest dial. */
  private static RunoutReadings trial(long seed) {
    var part = Part.offset(38 * UM, 1.1).tilted(1.3e-3, 2.6);
    var holding = new Holding(part, Part.TRUE, Part.TRUE, List.of(), 0, 0);
    var dial = Dial.clean(10 * UM).with(Nuisances.clean().withScatter(2 * UM));
    var plan = RunoutPlan.oneTurn(5e-3, 8).at(5e-3, 17e-3);
    return RunoutBench.take(seed, holding, plan, dial)
        .readings("law", TIP, RunoutCoverage.ANGLE_LIMIT);
  }

  private static RunoutReadings with(RunoutReadings r, List<Sweep> sweeps) {
    return new RunoutReadings(
        r.head(), r.indicator(), r.gaugeDiameter(), r.tip(), r.angleLimit(), sweeps);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void turningEveryAngleTurnsEveryHighSpotAndNothingElse(long seed) {
    RunoutReadings before = trial(seed);
    double by = Math.toRadians(77);
    List<Sweep> turned = new ArrayList<>();
    for (Sweep s : before.sweeps()) {
      turned.add(
          new Sweep(
              s.station(),
              s.clamping(),
              s.collet(),
              s.shank(),
              s.angle().map(a -> a + by),
              s.reading(),
              s.swing(),
              s.line()));
    }
    Runout a = reduce(before);
    Runout b = reduce(with(before, turned));
    double shift =
        Math.IEEEremainder(
            b.axis().tip().highSpot().value() - a.axis().tip().highSpot().value() - by,
            2 * Math.PI);
    assertThat(shift).isCloseTo(0, within(0.2 * u(a.axis().tip().highSpot())));
    same(a.axis().tip().tir(), b.axis().tip().tir());
    same(a.axis().tilt(), b.axis().tilt());
    same(a.stations().get(0).eccentricity(), b.stations().get(0).eccentricity());
  }

  /**
   * The same to within what the draws leave open: some 3 % of u, and 5 % of an interval's width.
   */
  private static void same(Figure a, Figure b) {
    assertThat(b.value()).isCloseTo(a.value(), within(0.15 * u(a)));
    assertThat(width(b)).isCloseTo(width(a), within(0.15 * width(a)));
  }

  private static double width(Figure figure) {
    var interval = figure.estimate().orElseThrow().interval();
    return interval.high() - interval.low();
  }

  private static double u(Figure figure) {
    return figure.estimate().orElseThrow().u();
  }

  @Test
  void scalingReadingsAndDialScalesLengthsAndLeavesAngles() {
    RunoutReadings before = trial(4);
    double by = 2.54;
    List<Sweep> scaled = new ArrayList<>();
    for (Sweep s : before.sweeps()) {
      scaled.add(
          new Sweep(
              s.station(),
              s.clamping(),
              s.collet(),
              s.shank(),
              s.angle(),
              s.reading().map(r -> by * r),
              s.swing(),
              s.line()));
    }
    IndicatorLimits dial = before.indicator();
    var larger =
        new IndicatorLimits(
            dial.record(),
            by * dial.division(),
            by * dial.readTo(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty());
    Runout a = reduce(before);
    Runout b =
        reduce(
            new RunoutReadings(
                before.head(),
                larger,
                before.gaugeDiameter(),
                before.tip(),
                before.angleLimit(),
                scaled));
    assertThat(b.axis().tip().tir().value())
        .isCloseTo(by * a.axis().tip().tir().value(), within(1e-12));
    assertThat(b.axis().tip().highSpot().value())
        .isCloseTo(a.axis().tip().highSpot().value(), within(1e-9));
  }

  @Test
  void theOrderOfTheStationsChangesNothing() {
    RunoutReadings before = trial(5);
    List<Sweep> reversed = new ArrayList<>(before.sweeps());
    Collections.reverse(reversed);
    Runout a = reduce(before);
    Runout b = reduce(with(before, reversed));
    assertThat(b.axis().tip().tir().value()).isCloseTo(a.axis().tip().tir().value(), within(1e-15));
    assertThat(b.stations().get(1).tir().estimate())
        .isEqualTo(a.stations().get(0).tir().estimate());
  }

  @Test
  void theFolderOfTheFileChangesNoDigit() {
    RunoutReadings r = trial(5);
    var moved =
        new TrialHead(
            "/somewhere/else/law",
            "runout",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());
    Runout a = reduce(r);
    Runout b =
        reduce(
            new RunoutReadings(
                moved, r.indicator(), r.gaugeDiameter(), r.tip(), r.angleLimit(), r.sweeps()));
    assertThat(b.axis().tip().tir().estimate()).isEqualTo(a.axis().tip().tir().estimate());
    assertThat(b.nextClamping().tir().estimate()).isEqualTo(a.nextClamping().tir().estimate());
  }

  @Test
  void fourEvenPositionsReadAThreeLobedPinAsEccentricityAndSaySo() {
    double lobe = 20 * UM;
    var holding = Holding.clean(0, 0).with(new Lobe(3, lobe, 0));
    var dial = Dial.clean(1 * UM);
    var four = RunoutBench.take(1, holding, RunoutPlan.oneTurn(5e-3, 4), dial);
    Runout fooled = reduce(four.readings("four", TIP, 0));
    // source: recomputed: cos 3θ equals cos θ at 0°, 90°, 180° and 270°
    assertThat(fooled.stations().get(0).eccentricity().value()).isCloseTo(lobe, within(UM));
    assertThat(fooled.advice()).extracting(s -> s.code()).contains("lobes-unseen");

    var eight = RunoutBench.take(1, holding, RunoutPlan.oneTurn(5e-3, 8), dial);
    Runout seen = reduce(eight.readings("eight", TIP, 0));
    assertThat(seen.stations().get(0).eccentricity().estimate().orElseThrow().interval().low())
        .isZero();
    assertThat(seen.stations().get(0).harmonics())
        .singleElement()
        .satisfies(h -> assertThat(h.order()).isEqualTo(3))
        .satisfies(h -> assertThat(h.amplitude().value()).isCloseTo(lobe, within(UM)));
    assertThat(seen.stations().get(0).tir().value()).isCloseTo(2 * lobe, within(2 * UM));
  }

  @Test
  void equalReadingsDoNotProveATrueSpindle() {
    var taken =
        RunoutBench.take(
            1,
            Holding.clean(0, 0),
            RunoutPlan.oneTurn(5e-3, 8),
            Dial.clean(10 * UM).zeroed(Dial.Zero.FIRST));
    var station = reduce(taken.readings("equal", TIP, 0)).stations().get(0);
    assertThat(station.swing().value()).isZero();
    var interval = station.eccentricity().estimate().orElseThrow().interval();
    assertThat(interval.low()).isZero();
    assertThat(interval.high()).isBetween(2 * UM, 6 * UM);
    assertThat(station.highSpot().known()).isFalse();
  }

  @Test
  void howWellAnglesAreSetIsACauseOfItsOwn() {
    var dial = Dial.clean(1 * UM).with(Nuisances.clean().withAngleError(Math.toRadians(3)));
    var taken = RunoutBench.take(3, Holding.clean(100 * UM, 1), RunoutPlan.oneTurn(5e-3, 8), dial);
    Figure highSpot =
        reduce(taken.readings("angles", TIP, Math.toRadians(3))).stations().get(0).highSpot();
    double angles =
        highSpot.budget().stream()
            .filter(s -> s.cause().part().equals("angle-setting-across"))
            .mapToDouble(Figure.Share::u)
            .sum();
    // source: recomputed: errors of u each on N even positions turn the high spot by u √(3/2N), u =
    // 3°/√3
    double most = Math.toRadians(3) / Math.sqrt(3) * Math.sqrt(1.5 / 8);
    assertThat(angles).isBetween(0.4 * most, 1.001 * most);
  }

  @Test
  void aSlippedDialIsSeenAtTheClosingReading() {
    var slipping = Nuisances.clean().withScatter(UM).withSlip(5, 100 * UM);
    var taken =
        RunoutBench.take(
            1,
            Holding.clean(40 * UM, 1),
            RunoutPlan.oneTurn(5e-3, 8).repeatingFirst(),
            Dial.clean(10 * UM).with(slipping));
    Runout closed = reduce(taken.readings("slip", TIP, 0));
    assertThat(closed.cautions()).extracting(s -> s.code()).contains("slip-or-drift");
    assertThat(closed.advice()).extracting(s -> s.code()).doesNotContain("no-closing-reading");
    assertThat(reduce(trial(1)).advice()).extracting(s -> s.code()).contains("no-closing-reading");
  }

  @Test
  void theLagOfADialIsThatOfItsDescribingFunction() {
    // A needle that follows through a slack of 3 µm, e = 20 µm, turned very finely: its first
    // harmonic.
    double retrace = 3 * UM;
    double e = 20 * UM;
    int n = 20_000;
    double needle = 0;
    double a = 0;
    double b = 0;
    for (int i = 0; i < 2 * n; i++) {
      double theta = 2 * Math.PI * i / n;
      double y = e * Math.cos(theta);
      needle = Math.max(y - retrace / 2, Math.min(y + retrace / 2, needle));
      if (i >= n) {
        a += 2 * needle * Math.cos(theta) / n;
        b += 2 * needle * Math.sin(theta) / n;
      }
    }
    // source: recomputed: by following such a needle through two turns, in this test
    assertThat(DialLag.along(retrace, e)).isCloseTo(e - a, within(0.01 * UM));
    assertThat(b).isBetween(0.0, DialLag.across(retrace));
    // source: recomputed: 3 µm of retrace move the high spot of 20 µm by some 5°
    assertThat(Math.toDegrees(Math.atan2(b, a))).isCloseTo(5, within(0.5));
  }

  @Test
  void trialsReadWithOneDialShareItsLimitOfError() {
    RunoutReadings r = trial(6);
    Runout a = reduce(withLimit(r, "one"));
    Runout b = reduce(withLimit(r, "two"));
    Draws draws = Draws.DEFAULT;
    Figure difference =
        Drawn.through(
            v -> v[0] - v[1],
            a.axis().tip().tir().unit(),
            draws,
            a.axis().tip().tir(),
            b.axis().tip().tir());
    double apart = Math.hypot(u(a.axis().tip().tir()), u(b.axis().tip().tir()));
    assertThat(u(difference)).isLessThan(0.7 * apart);
  }

  private static RunoutReadings withLimit(RunoutReadings r, String file) {
    IndicatorLimits dial = r.indicator();
    var limited =
        new IndicatorLimits(
            "indicator/shared",
            dial.division(),
            dial.readTo(),
            Optional.of(
                new IndicatorLimits.LimitOfError(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    20 * UM,
                    1e-3)),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty());
    var head =
        new TrialHead(
            file, "runout", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    return new RunoutReadings(
        head, limited, r.gaugeDiameter(), r.tip(), r.angleLimit(), r.sweeps());
  }

  @Test
  void scatterOfReadingsIsNotAbsurd() {
    Samples sigma = Samples.of(reduce(trial(7)).stations().get(0).scatter().value());
    assertThat(sigma.get(0)).isBetween(0.2 * UM, 6 * UM);
  }

  @Test
  void swingsOfThreeClampingsArePutForwardByStudentsT() {
    List<Sweep> swings = new ArrayList<>();
    for (int c = 1; c <= 3; c++) {
      swings.add(
          new Sweep(
              OptionalDouble.of(10e-3),
              c,
              OptionalDouble.empty(),
              OptionalDouble.empty(),
              Samples.of(),
              Samples.of(),
              OptionalDouble.of((140 + 20 * c) * UM),
              c));
    }
    Runout runout = reduce(with(trial(8), swings));
    var next = runout.nextClamping().tir().estimate().orElseThrow();
    // source: NIST/SEMATECH e-Handbook 1.3.6.7.2, Student's t, 0.975 on 2 degrees of freedom: 4.303
    double half = 4.303 * 20 * UM * Math.sqrt(4.0 / 3);
    assertThat(next.value()).isCloseTo(180 * UM, within(1e-12));
    assertThat(next.interval().high()).isCloseTo(180 * UM + half, within(0.02 * UM));
    assertThat(next.interval().low()).isCloseTo(180 * UM - half, within(0.02 * UM));
    assertThat(runout.nextClamping().eccentricity().known()).isFalse();
  }
}
