package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.RunoutReadings.Sweep;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;
import rundlauf.simulated.RunoutPlan.Clamping;

/** What spindle, collet and shank add, and how best to set them. */
class PartsLawTest {
  private static final double UM = 1e-6;
  private static final String HALF_TURNS = "0 0, 180 0, 0 180, 180 180";

  private static final Holding TRUTH =
      new Holding(
          Part.offset(17 * UM, Math.toRadians(70)),
          Part.offset(33 * UM, Math.toRadians(200)),
          Part.offset(24 * UM, Math.toRadians(20)),
          List.of(),
          0,
          0);

  private static Clamping[] clampings(String clocks) {
    List<Clamping> all = new ArrayList<>();
    for (String pair : clocks.split(",")) {
      String[] angles = pair.strip().split(" ");
      all.add(
          new Clamping(
              Math.toRadians(Double.parseDouble(angles[0])),
              Math.toRadians(Double.parseDouble(angles[1]))));
    }
    return all.toArray(Clamping[]::new);
  }

  private static RunoutReadings trial(String clocks, double scatter) {
    return trial(TRUTH, clocks, scatter, 3);
  }

  private static RunoutReadings trial(Holding truth, String clocks, double scatter, long seed) {
    var dial = Dial.clean(2 * UM).with(Nuisances.clean().withScatter(0.5 * UM));
    var plan = RunoutPlan.oneTurn(10e-3, 8).clamped(clampings(clocks));
    var holding = truth.withScatter(scatter, 0);
    return RunoutBench.take(seed, holding, plan, dial)
        .readings("parts", OptionalDouble.empty(), RunoutCoverage.ANGLE_LIMIT);
  }

  private static Runout reduce(RunoutReadings readings) {
    return RunoutReduction.reduce(readings, Draws.DEFAULT, Work.sequential());
  }

  private static RunoutReadings with(RunoutReadings r, List<Sweep> sweeps) {
    return new RunoutReadings(
        r.head(), r.indicator(), r.gaugeDiameter(), r.tip(), r.angleLimit(), sweeps);
  }

  private static List<String> names(Runout runout) {
    return runout.parts().stream().map(Runout.Part::name).toList();
  }

  private static void holds(Figure figure, double truth) {
    var interval = figure.estimate().orElseThrow().interval();
    assertThat(truth).isBetween(interval.low(), interval.high());
  }

  private static List<String> advice(Runout runout) {
    return runout.advice().stream().map(Saying::code).toList();
  }

  /** Repeated, since with one clamping to spare two degrees of freedom leave wide intervals. */
  private static final String REPEATED =
      HALF_TURNS + ", 90 0, 270 180, 90 90, 270 270, 0 90, 180 270, 90 270, 0 0";

  @Test
  void eachPartIsFoundWithItsHighSpotAndTheGuiltyOneNamed() {
    Runout runout = reduce(trial(REPEATED, 0.5 * UM));
    assertThat(names(runout)).containsExactly("spindle", "collet", "shank");
    double[] sizes = {17, 33, 24};
    double[] spots = {70, 200, 20};
    for (int k = 0; k < 3; k++) {
      Runout.Part part = runout.parts().get(k);
      assertThat(part.eccentricity().value()).isCloseTo(sizes[k] * UM, within(UM));
      assertThat(Math.toDegrees(part.highSpot().value())).isCloseTo(spots[k], within(3.0));
      holds(part.eccentricity(), sizes[k] * UM);
    }
    assertThat(runout.advice())
        .filteredOn(s -> s.code().equals("part-to-blame"))
        .singleElement()
        .satisfies(s -> assertThat(s.args()).asString().contains("collet"));
    holds(runout.clampingScatter(), 0.5 * UM);
  }

  // source: by hand: E_part · exp(−i·clock), the convention of parts
  @Test
  void partsSetBestStandAsTheirMarksTurnThem() {
    BestClocking best = reduce(trial(REPEATED, 0.5 * UM)).bestClocking();
    double[] clocks = {0, best.collet().orElseThrow(), best.shank().orElseThrow()};
    double[] sum = new double[2];
    for (int k = 0; k < 3; k++) {
      BestClocking.Standing part = best.standings().get(k);
      double spot = part.asClamped().direction() - part.set().direction();
      assertThat(Math.IEEEremainder(spot - clocks[k], 2 * Math.PI)).isCloseTo(0, within(1e-9));
      sum[0] += part.set().a().mean();
      sum[1] += part.set().b().mean();
    }
    assertThat(best.first().collet()).hasValue(0);
    assertThat(best.standings())
        .extracting(s -> s.part())
        .containsExactlyElementsOf(names(reduce(trial(REPEATED, 0.5 * UM))));
    assertThat(Math.hypot(sum[0], sum[1])).isLessThan(UM);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 0 | spindle+collet+shank",
        "0 0, 0 0, 0 0 | spindle+collet+shank",
        "0 0, 360 720 | spindle+collet+shank",
        "0 0, 180 0 | spindle+shank collet",
        "0 0, 0 180, 0 90 | spindle+collet shank",
        "0 30, 180 210, 90 120 | spindle collet+shank",
        "0 0, 180 90 | spindle+collet+shank",
        "0 0, 180 90, 0 0, 180 90 | spindle+collet+shank",
        "0 0, 180 0, 0 180 | spindle collet shank",
        "0 0, 90 180, 180 0, 270 180 | spindle collet shank"
      })
  void theClocksDecideWhatIsToldApart(String clocks, String names) {
    Runout runout = reduce(trial(clocks, UM));
    assertThat(String.join(" ", names(runout))).isEqualTo(names);
    boolean apart = names.equals("spindle collet shank");
    assertThat(advice(runout).stream().anyMatch(c -> c.matches("parts-.*-more-clampings?")))
        .isEqualTo(!apart);
    assertThat(runout.bestClocking().tir().known()).isEqualTo(names.contains(" "));
  }

  @Test
  void aJoinedBodyIsTheSumOfItsPartsAsTheyStand() {
    Runout still = reduce(trial("0 50, 180 50, 0 50, 180 50, 0 50, 180 50", 0.3 * UM));
    // source: recomputed: the sum of the two offsets of the truth by their components
    double a = 17 * Math.cos(Math.toRadians(70)) + 24 * Math.cos(Math.toRadians(20 - 50));
    double b = 17 * Math.sin(Math.toRadians(70)) + 24 * Math.sin(Math.toRadians(20 - 50));
    assertThat(still.parts().get(0).eccentricity().value())
        .isCloseTo(Math.hypot(a, b) * UM, within(UM));
    Runout together = reduce(trial("0 30, 180 210, 0 30, 180 210, 90 120, 270 300", 0.3 * UM));
    double c = 33 * Math.cos(Math.toRadians(200)) + 24 * Math.cos(Math.toRadians(20 - 30));
    double d = 33 * Math.sin(Math.toRadians(200)) + 24 * Math.sin(Math.toRadians(20 - 30));
    assertThat(together.parts().get(1).eccentricity().value())
        .isCloseTo(Math.hypot(c, d) * UM, within(UM));
    double between =
        Math.toDegrees(
            together.bestClocking().shank().orElseThrow()
                - together.bestClocking().collet().orElseThrow());
    assertThat(Math.IEEEremainder(between - 30, 360)).isCloseTo(0, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void turningEveryAngleTurnsEveryHighSpotAndNothingElse(long seed) {
    RunoutReadings before = trial(TRUTH, REPEATED, 0.5 * UM, seed);
    double by = Math.toRadians(77);
    List<Sweep> turned = new ArrayList<>();
    for (Sweep s : before.sweeps()) {
      turned.add(
          new Sweep(
              s.station(),
              s.clamping(),
              s.collet(),
              s.shank(),
              s.angle().map(x -> x + by),
              s.reading(),
              s.swing(),
              s.line()));
    }
    Runout a = reduce(before);
    Runout b = reduce(with(before, turned));
    for (int k = 0; k < 3; k++) {
      Figure was = a.parts().get(k).highSpot();
      double moved = b.parts().get(k).highSpot().value() - was.value() - by;
      assertThat(Math.IEEEremainder(moved, 2 * Math.PI)).isCloseTo(0, within(0.2 * u(was)));
      same(a.parts().get(k).eccentricity(), b.parts().get(k).eccentricity());
    }
    same(a.bestClocking().tir(), b.bestClocking().tir());
    same(a.bestClocking().insteadOf(), b.bestClocking().insteadOf());
    same(a.clampingScatter(), b.clampingScatter());
    assertThat(b.bestClocking().collet().orElseThrow())
        .isCloseTo(a.bestClocking().collet().orElseThrow(), within(Math.toRadians(2.1)));
    assertThat(b.bestClocking().shank().orElseThrow())
        .isCloseTo(a.bestClocking().shank().orElseThrow(), within(Math.toRadians(2.1)));
  }

  private static double u(Figure figure) {
    return figure.estimate().orElseThrow().u();
  }

  private static void same(Figure a, Figure b) {
    assertThat(b.value()).isCloseTo(a.value(), within(0.2 * u(a)));
    var wide = a.estimate().orElseThrow().interval();
    var other = b.estimate().orElseThrow().interval();
    assertThat(other.high() - other.low())
        .isCloseTo(wide.high() - wide.low(), within(0.15 * (wide.high() - wide.low())));
  }

  @Test
  void scalingReadingsAndDialScalesLengthsAndLeavesAngles() {
    RunoutReadings before = trial(REPEATED, 0.5 * UM);
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
    for (int k = 0; k < 3; k++) {
      double was = a.parts().get(k).eccentricity().value();
      assertThat(b.parts().get(k).eccentricity().value()).isCloseTo(by * was, within(1e-11));
      assertThat(b.parts().get(k).highSpot().value())
          .isCloseTo(a.parts().get(k).highSpot().value(), within(1e-6));
    }
    assertThat(b.bestClocking().tir().value())
        .isCloseTo(by * a.bestClocking().tir().value(), within(1e-11));
    assertThat(b.bestClocking().collet()).isEqualTo(a.bestClocking().collet());
    assertThat(b.clampingScatter().value())
        .isCloseTo(by * a.clampingScatter().value(), within(1e-11));
  }

  @Test
  void theOrderOfTheClampingsChangesOnlyWhatTheFirstOneMeans() {
    RunoutReadings before = trial(REPEATED, 0.5 * UM);
    List<Sweep> reversed = new ArrayList<>(before.sweeps());
    Collections.reverse(reversed);
    Runout a = reduce(before);
    Runout b = reduce(with(before, reversed));
    for (int k = 0; k < 3; k++) {
      same(a.parts().get(k).eccentricity(), b.parts().get(k).eccentricity());
    }
    same(a.bestClocking().tir(), b.bestClocking().tir());
  }

  @Test
  void setBestTheToolRunsTruerAndTheTruthLiesInTheInterval() {
    Runout runout = reduce(trial(REPEATED, 0.5 * UM));
    BestClocking best = runout.bestClocking();
    double collet = best.collet().orElseThrow();
    double shank = best.shank().orElseThrow();
    holds(best.tir(), 2 * TRUTH.mean(10e-3, collet, shank).amplitude());
    holds(best.insteadOf(), 2 * TRUTH.mean(10e-3, 0, 0).amplitude());
    assertThat(best.tir().value()).isPositive().isLessThan(0.25 * best.insteadOf().value());
    assertThat(Math.toDegrees(collet)).isCloseTo(Math.rint(Math.toDegrees(collet)), within(1e-9));
  }

  @Test
  void threeClampingsTellThePartsButNotTheirScatter() {
    Runout runout = reduce(trial("0 0, 180 0, 0 180", UM));
    assertThat(runout.clampingScatter())
        .isInstanceOfSatisfying(
            Missing.class, m -> assertThat(m.why().code()).isEqualTo("clampings-all-used"));
    assertThat(advice(runout)).contains("clampings-all-used", "clamping-scatter-assumed");
    assertThat(u(runout.parts().get(1).eccentricity()))
        .isGreaterThan(0.5 * ClampingScatter.ASSUMED);
  }

  @Test
  void aColumnLeftOutStaysWithTheSpindleAndHasNoAngle() {
    RunoutReadings marked = trial("0 0, 180 0, 0 0, 180 0", UM);
    List<Sweep> unmarked = new ArrayList<>();
    for (Sweep s : marked.sweeps()) {
      unmarked.add(
          new Sweep(
              s.station(),
              s.clamping(),
              s.collet(),
              OptionalDouble.empty(),
              s.angle(),
              s.reading(),
              s.swing(),
              s.line()));
    }
    Runout runout = reduce(with(marked, unmarked));
    assertThat(names(runout)).containsExactly("spindle+shank", "collet");
    assertThat(runout.bestClocking().collet()).isPresent();
    assertThat(runout.bestClocking().shank()).isEmpty();
    assertThat(reduce(marked).bestClocking().shank()).hasValue(0);
  }

  @Test
  void aClampingWithoutAnAngleThatOthersHaveIsLeftOutAndNamed() {
    RunoutReadings whole = trial(REPEATED, 0.5 * UM);
    List<Sweep> blank = new ArrayList<>(whole.sweeps());
    Sweep s = blank.get(4);
    blank.set(
        4,
        new Sweep(
            s.station(),
            s.clamping(),
            OptionalDouble.empty(),
            s.shank(),
            s.angle(),
            s.reading(),
            s.swing(),
            s.line()));
    List<Sweep> without = new ArrayList<>(whole.sweeps());
    without.remove(4);
    Runout runout = reduce(with(whole, blank));
    assertThat(advice(runout)).contains("clock-not-told");
    assertThat(runout.parts().get(1).eccentricity().estimate())
        .isEqualTo(reduce(with(whole, without)).parts().get(1).eccentricity().estimate());
  }

  @Test
  void swingsAloneTellNoPart() {
    var dial = Dial.clean(2 * UM);
    var plan = RunoutPlan.oneTurn(10e-3, 8).clamped(clampings(HALF_TURNS)).swingsOnly();
    RunoutReadings swings =
        RunoutBench.take(3, TRUTH, plan, dial)
            .readings("swings", OptionalDouble.empty(), RunoutCoverage.ANGLE_LIMIT);
    Runout runout = reduce(swings);
    assertThat(runout.parts()).hasSize(1);
    assertThat(runout.parts().get(0).eccentricity().known()).isFalse();
    assertThat(runout.bestClocking().tir())
        .isInstanceOfSatisfying(
            Missing.class, m -> assertThat(m.why().code()).isEqualTo("swing-only"));
  }

  @Test
  void theNextClampingKeepsToTheScatterThatThePartsLeave() {
    Runout runout = reduce(trial("0 0, 180 0, 0 180, 180 180, 90 90, 270 90", 4 * UM));
    assertThat(runout.clampingScatter().known()).isTrue();
    assertThat(advice(runout)).doesNotContain("clamping-scatter-assumed");
    NextAxis next = NextAxis.at(runout, 10e-3, Draws.DEFAULT).orElseThrow();
    assertThat(next.scatterMeasured()).isTrue();
    Figure carried = next.offset().magnitude(Unit.MICROMETRE);
    assertThat(carried.estimate()).isEqualTo(runout.nextClamping().eccentricity().estimate());
  }
}
