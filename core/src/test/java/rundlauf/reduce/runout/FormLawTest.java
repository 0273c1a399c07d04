package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Missing;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Lobe;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;

class FormLawTest {
  private static final double UM = 1e-6;
  private static final Draws FEW = new Draws(3, 400);

  /** Readings of a surface on a fine dial, an angle limit so small that it does nothing. */
  private static RunoutReadings read(DoubleUnaryOperator surface, int positions, int turns) {
    Samples angle = Samples.generate(positions * turns, i -> 2 * Math.PI * i / positions);
    return read(angle, angle.map(surface), 0.01 * UM, OptionalDouble.empty());
  }

  private static RunoutReadings read(
      Samples angle, Samples surface, double step, OptionalDouble ball) {
    var dial =
        new IndicatorLimits(
            "dial",
            step,
            step,
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            ball,
            Optional.empty());
    var sweep =
        new RunoutReadings.Sweep(
            OptionalDouble.of(5e-3),
            1,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            angle,
            surface.map(r -> Math.rint(r / step) * step),
            OptionalDouble.empty(),
            1);
    var head =
        new TrialHead(
            "form", "runout", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    return new RunoutReadings(
        head, dial, OptionalDouble.of(3e-3), Optional.empty(), 1e-6, List.of(sweep));
  }

  private static Form form(RunoutReadings readings) {
    return RunoutReduction.reduce(readings, FEW, Work.sequential()).stations().get(0).form();
  }

  private static double[] values(Form form) {
    return form.roundness().values().stream().mapToDouble(f -> f.value()).toArray();
  }

  private static double lobes(double t) {
    return 5 * UM * Math.cos(3 * t - 0.4) + 3 * UM * Math.cos(2 * t + 1) + UM * Math.cos(5 * t);
  }

  @Test
  void theMinimumZoneIsTheLeastOfTheFour() {
    double[] four = values(form(read(FormLawTest::lobes, 24, 1)));
    assertThat(four[1]).isLessThan(Math.min(four[0], Math.min(four[2], four[3])));
    assertThat(four[1]).isGreaterThan(10 * UM);
  }

  @Test
  void anOffsetChangesNoRoundness() {
    double[] centred = values(form(read(FormLawTest::lobes, 24, 1)));
    double[] offset = values(form(read(t -> lobes(t) + 60 * UM * Math.cos(t - 1), 24, 1)));
    assertThat(offset).containsExactly(centred, within(0.03 * UM));
  }

  @Test
  void theStartingAngleChangesNoRoundness() {
    double[] before = values(form(read(FormLawTest::lobes, 24, 1)));
    double[] turned = values(form(read(t -> lobes(t + 0.7), 24, 1)));
    assertThat(turned).containsExactly(before, within(0.15 * UM));
  }

  @Test
  void scaledReadingsScaleTheRoundness() {
    double[] before = values(form(read(FormLawTest::lobes, 24, 1)));
    double[] twice = values(form(read(t -> 2 * lobes(t), 24, 1)));
    for (int c = 0; c < 4; c++) {
      assertThat(twice[c]).isCloseTo(2 * before[c], within(0.05 * UM));
    }
  }

  @ParameterizedTest
  @CsvSource({"2,4", "3,6", "5,2.5"})
  void aRegularLobingHasTwiceItsAmplitude(int order, double amplitude) {
    double[] four = values(form(read(t -> amplitude * UM * Math.cos(order * t + 0.2), 24, 1)));
    assertThat(four)
        .containsExactly(
            new double[] {
              2 * amplitude * UM, 2 * amplitude * UM, 2 * amplitude * UM, 2 * amplitude * UM
            },
            within(0.02 * UM));
  }

  // source: recomputed: sqrt((R + rho)^2 - e^2 sin^2) of an offset cylinder under a ball tip
  @Test
  void aBallTipFeignsNoOvality() {
    double e = 150 * UM;
    double both = 1.5e-3 + 1e-3;
    Samples angle = Samples.generate(24, i -> 2 * Math.PI * i / 24);
    Samples offset =
        angle.map(
            t ->
                e * Math.cos(t - 1)
                    + Math.sqrt(both * both - Math.pow(e * Math.sin(t - 1), 2))
                    - both);
    Samples oval = Samples.generate(24, i -> offset.get(i) + 4 * UM * Math.cos(2 * angle.get(i)));
    Form with = form(read(angle, oval, 0.01 * UM, OptionalDouble.of(1e-3)));
    assertThat(with.mzc().value()).isCloseTo(8 * UM, within(0.05 * UM));
    Form without = form(read(angle, oval, 0.01 * UM, OptionalDouble.empty()));
    assertThat(Math.abs(without.mzc().value() - 8 * UM)).isGreaterThan(0.5 * UM);
  }

  @Test
  void turnsPartMotionInStepFromMotionOutOfStep() {
    DoubleUnaryOperator surface =
        t -> 20 * UM * Math.cos(t) + 3 * UM * Math.cos(2 * t) + 2 * UM * Math.cos(t / 2);
    Form form = form(read(surface, 8, 4));
    assertThat(form.synchronous().value()).isCloseTo(6 * UM, within(0.02 * UM));
    assertThat(form.asynchronous().value()).isCloseTo(4 * UM, within(0.03 * UM));
  }

  /** Each of two strong orders hides the other from a test of one alone. */
  @Test
  void twoStrongOrdersAreFoundTogether() {
    Form form =
        form(
            read(
                t -> 8 * UM * Math.cos(2 * t + 1) + 8 * UM * Math.cos(3 * t) + UM * Math.sin(7 * t),
                12,
                1));
    assertThat(form.mzc().value()).isBetween(20 * UM, 32 * UM);
  }

  @Test
  void oneTurnCannotPartThem() {
    var why = ((Missing) form(read(FormLawTest::lobes, 8, 1)).synchronous()).why();
    assertThat(why.code()).isEqualTo("one-turn-only");
  }

  @Test
  void fourPositionsLeaveNoRoomForLobes() {
    var why = ((Missing) form(read(t -> UM * Math.cos(t), 4, 1)).mzc()).why();
    assertThat(why.code()).isEqualTo("form-no-room");
  }

  /** Whose three lobes are, the shank turned by a third of a lobe between two clampings. */
  @ParameterizedTest
  @CsvSource({"true,lobes-are-the-pins", "false,lobes-are-not-the-pins"})
  void lobesThatFollowThePinAreItsOwn(boolean pins, String code) {
    double turn = Math.toRadians(40);
    var plan =
        RunoutPlan.oneTurn(5e-3, 12)
            .clamped(new RunoutPlan.Clamping(0, 0), new RunoutPlan.Clamping(0, pins ? turn : 0));
    var holding = Holding.clean(20 * UM, 1).with(new Lobe(3, 6 * UM, 0.3));
    var dial = Dial.clean(2 * UM).with(Nuisances.clean().withScatter(0.5 * UM));
    RunoutReadings taken =
        RunoutBench.take(5, holding, plan, dial).readings("whose", OptionalDouble.empty(), 0.02);
    List<RunoutReadings.Sweep> marked = new ArrayList<>();
    for (var s : taken.sweeps()) {
      double clock = s.clamping() == 1 ? 0 : turn;
      marked.add(
          new RunoutReadings.Sweep(
              s.station(),
              s.clamping(),
              s.collet(),
              OptionalDouble.of(clock),
              s.angle(),
              s.reading(),
              s.swing(),
              s.line()));
    }
    var runout =
        RunoutReduction.reduce(
            new RunoutReadings(
                taken.head(),
                taken.indicator(),
                taken.gaugeDiameter(),
                taken.tip(),
                taken.angleLimit(),
                marked),
            FEW,
            Work.sequential());
    assertThat(runout.advice()).extracting(s -> s.code()).contains(code);
  }

  /** Share of trials on a three-lobed pin whose interval holds twice the lobes' amplitude. */
  private static double held(double amplitude, int positions, double scatter, int trials) {
    int held = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "form " + amplitude + positions + scatter);
      var dial = Dial.clean(10 * UM).with(Nuisances.clean().withScatter(scatter * 10 * UM));
      var holding =
          Holding.clean(23 * UM, 6 * stream.uniform())
              .with(new Lobe(3, amplitude * 10 * UM, 6 * stream.uniform()));
      var taken = RunoutBench.take(stream, holding, RunoutPlan.oneTurn(5e-3, positions), dial);
      var readings = taken.readings("trial " + t, OptionalDouble.empty(), 1e-3);
      var interval = form(readings).mzc().estimate().orElseThrow().interval();
      held += interval.holds(2 * amplitude * 10 * UM) ? 1 : 0;
    }
    return held / (double) trials;
  }

  @ParameterizedTest
  @CsvSource({"0,8", "0.2,8", "0.5,12", "1,16", "2,8", "2,16"})
  void theIntervalHoldsTheLobesOfAPin(double amplitude, int positions) {
    // 60 trials a cell: three standard deviations of a share of 93 % are 10 %.
    assertThat(held(amplitude, positions, 0.2, 60)).isGreaterThanOrEqualTo(0.83);
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({
    "0,8,0.2",
    "0.2,8,0.2",
    "0.5,8,0.2",
    "1,8,0.2",
    "2,8,0.2",
    "0.2,16,0.2",
    "0.5,16,0.2",
    "1,16,0.2",
    "0.5,16,0.5",
    "1,16,0.5",
    "2,16,0.5"
  })
  void theIntervalHoldsTheLobesOfAPinInEachCell(double amplitude, int positions, double scatter) {
    double share = held(amplitude, positions, scatter, 1000);
    System.out.println(amplitude + " " + positions + " " + scatter + " " + share);
    assertThat(share).isGreaterThanOrEqualTo(0.9);
  }
}
