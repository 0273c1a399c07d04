package rundlauf.reduce.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Unit;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.TrialHead;

/** The stated intervals hold the truth as often as they say, curved dials included. */
class SpeedCoverageLawTest {
  private static final Draws FEW = new Draws(5, 800);
  private static final int TRIALS = 400;

  @ParameterizedTest
  @CsvSource({
    "straight, 5, 2, 20, 1", "straight, 5, 3, 60, 10", "bent, 6, 2, 20, 1", "bent, 8, 3, 60, 100",
    "bent, 5, 2, 5, 1", "wavy, 7, 2, 30, 10", "wavy, 9, 3, 100, 10", "straight, 4, 1, 0, 100",
  })
  void settingAndSpeedsHoldTheTruth(
      String shape, int settings, int repeats, double sd, double step) {
    DoubleUnaryOperator truth = truth(shape);
    Stream stream = Stream.of(11, shape + settings + sd);
    int setting = 0;
    int top = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      double wanted = 20 + 60 * stream.uniform();
      Speed speed = reduce(truth, settings, repeats, sd, step, wanted, stream);
      Figure found = speed.settingFor().get(0).setting();
      setting += found.known() && holds(found, wanted) ? 1 : 0;
      top += holds(speed.usableMax(), Unit.RPM.toSi(truth.applyAsDouble(100))) ? 1 : 0;
    }
    // 400 trials at 95 % stay over 93 % unless the law is broken; the seed is fixed
    assertThat(setting / (double) TRIALS).as("setting").isGreaterThanOrEqualTo(0.93);
    assertThat(top / (double) TRIALS).as("usable max").isGreaterThanOrEqualTo(0.93);
  }

  private static DoubleUnaryOperator truth(String shape) {
    return switch (shape) {
      case "straight" -> s -> 2000 + 220 * s;
      case "bent" -> s -> 26_000 * (1 - Math.exp(-(s + 10) / 45));
      default -> s -> 3000 + 200 * s + 1500 * Math.sin(s / 16);
    };
  }

  private static boolean holds(Figure figure, double truth) {
    return figure.estimate().orElseThrow().interval().holds(truth);
  }

  private static Speed reduce(
      DoubleUnaryOperator truth,
      int settings,
      int repeats,
      double sd,
      double step,
      double wanted,
      Stream stream) {
    List<SpeedReadings.Point> points = new ArrayList<>();
    for (int i = 0; i < settings * repeats; i++) {
      double setting = 10 + 90.0 * (i % settings) / (settings - 1);
      double rpm = truth.applyAsDouble(setting) + sd * stream.gaussian();
      double read = Unit.RPM.toSi(step * Math.rint(rpm / step));
      points.add(new SpeedReadings.Point(setting, read, OptionalDouble.empty(), i));
    }
    TrialHead head =
        new TrialHead(
            "speed.yaml", "speed", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    Samples asked = Samples.of(Unit.RPM.toSi(truth.applyAsDouble(wanted)));
    return SpeedReduction.reduce(new SpeedReadings(head, "", asked, points), FEW);
  }
}
