package rundlauf.reduce.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.TrialHead;

class SpeedReductionCaseTest {
  private static final Draws DRAWS = new Draws(1, 2000);

  @Test
  void straightCurveIsReadBackwards() {
    Speed speed = reduce(Samples.of(200, 12000), 10, 5003, 20, 10003, 30, 15003, 40, 20003);
    // source: recomputed: 12000 rpm lies (12000 − 10003)/5000 of the way from 20 to 30
    assertThat(setting(speed, 1)).isCloseTo(23.994, within(1e-9));
    assertThat(Unit.RPM.fromSi(speed.usableMin().value())).isCloseTo(5003, within(1e-9));
    assertThat(Unit.RPM.fromSi(speed.usableMax().value())).isCloseTo(20003, within(1e-9));
    assertThat(why(speed.settingFor().get(0).setting()))
        .isEqualTo(
            Saying.of(
                "speed-outside-curve",
                "settingFor",
                Arg.of(200 / 60.0, Unit.RPM),
                Arg.of(Unit.RPM.toSi(5003), Unit.RPM),
                Arg.of(Unit.RPM.toSi(20003), Unit.RPM)));
  }

  @Test
  void settingsAreNeverExtrapolated() {
    Speed speed = reduce(Samples.of(4999, 5000, 20000, 20001), 10, 5000, 40, 20000);
    assertThat(speed.settingFor().get(0).setting()).isInstanceOf(Missing.class);
    assertThat(setting(speed, 1)).isEqualTo(10);
    assertThat(setting(speed, 2)).isEqualTo(40);
    assertThat(speed.settingFor().get(3).setting()).isInstanceOf(Missing.class);
    assertThat(codes(speed.advice()))
        .containsExactly("speed-doubt-is-rounding", "speed-two-settings");
  }

  @Test
  void whatDoesNotTurnIsNoPartOfTheCurve() {
    Speed speed = reduce(Samples.of(1000), 5, 0, 10, 0, 15, 3001, 30, 9002);
    assertThat(speed.curve()).hasSize(2);
    assertThat(speed.settingFor().get(0).setting()).isInstanceOf(Missing.class);
    Interval dead = speed.deadBelow().estimate().orElseThrow().interval();
    assertThat(dead.low()).isEqualTo(10);
    assertThat(dead.high()).isEqualTo(15);
    assertThat(speed.deadBelow().value()).isEqualTo(12.5);
  }

  @Test
  void aSpindleThatAlwaysTurnedHasNoDeadBand() {
    Speed speed = reduce(Samples.of(), 10, 5000, 40, 20000);
    assertThat(why(speed.deadBelow()))
        .isEqualTo(Saying.of("speed-always-turned", "deadBelow", Arg.of(10, Unit.ONE)));
    assertThat(why(speed.saturatesAbove()).code()).isEqualTo("speed-still-rising");
  }

  @Test
  void flatTopIsFoundBetweenTwoSettings() {
    Speed speed = reduce(Samples.of(), 20, 8003, 40, 16001, 60, 23990, 80, 24012, 100, 24013);
    Interval flat = speed.saturatesAbove().estimate().orElseThrow().interval();
    assertThat(flat.low()).isEqualTo(40);
    assertThat(flat.high()).isEqualTo(60);
  }

  @Test
  void repeatsPoolTheirScatter() {
    Speed speed = reduce(Samples.of(), 10, 5001.3, 10, 5007.3, 20, 9001.4, 20, 9003.4);
    Figure.Estimate first = speed.curve().get(0).speed().estimate().orElseThrow();
    // source: from memory: JCGM 100:2008, 4.2.4: pooled s² = (18 + 2)/2, u of a mean of two
    double scatter = Math.sqrt(10) / Math.sqrt(2);
    double rounding = 0.1 / Math.sqrt(12);
    assertThat(first.value() * 60).isCloseTo(5004.3, within(1e-9));
    assertThat(first.u() * 60).isCloseTo(Math.hypot(scatter, rounding), within(1e-9));
    assertThat(codes(speed.advice())).containsExactly("speed-two-settings");
  }

  @Test
  void withoutRepeatsOnlyTheDigitsSpeak() {
    Speed speed = reduce(Samples.of(), 10, 5010, 20, 9020, 30, 12000);
    // source: from memory: JCGM 100:2008, F.2.2.1: rounding to 10 rpm has u = 10/√12 rpm
    assertThat(speed.curve().get(0).speed().estimate().orElseThrow().u() * 60)
        .isCloseTo(10 / Math.sqrt(12), within(1e-9));
    assertThat(speed.advice())
        .containsExactly(
            Saying.of("speed-doubt-is-rounding", "curve", Arg.of(Unit.RPM.toSi(10), Unit.RPM)));
  }

  @Test
  void speedsThatShowNoRoundingAreTakenAsExact() {
    Speed speed = reduce(Samples.of(), 10, 5010.123, 20, 9020.456, 30, 12000.789);
    assertThat(speed.curve().get(0).speed().estimate().orElseThrow().u()).isZero();
    assertThat(codes(speed.advice())).containsExactly("speed-doubt-unknown");
  }

  @Test
  void droopIsTheSlopeOverIdlePower() {
    List<SpeedReadings.Point> points =
        List.of(
            point(50, 12000, 40),
            point(50, 11800, 90),
            point(50, 11600, 140),
            point(80, 20000, 60),
            point(80, 19800, 110));
    Speed speed = SpeedReduction.reduce(readings("", Samples.of(), points), DRAWS);
    // source: recomputed: 200 rpm are lost for 50 W at both settings; the curve is the idle speed
    assertThat(Unit.RPM_PER_WATT.fromSi(speed.droop().value())).isCloseTo(4, within(1e-9));
    assertThat(Unit.RPM.fromSi(speed.curve().get(0).speed().value()))
        .isCloseTo(12000, within(1e-6));
    assertThat(Unit.RPM.fromSi(speed.curve().get(1).speed().value()))
        .isCloseTo(20000, within(1e-6));
  }

  @Test
  void idlePowersAloneTellNoDroop() {
    List<SpeedReadings.Point> points = List.of(point(50, 12000, 40), point(80, 20000, 60));
    Speed speed = SpeedReduction.reduce(readings("", Samples.of(), points), DRAWS);
    assertThat(why(speed.droop()).code()).isEqualTo("speed-no-load-step");
  }

  @Test
  void aFallBeyondTheDoubtIsSaidAndPooled() {
    Speed speed = reduce(Samples.of(), 10, 5001, 20, 9002, 30, 8003, 40, 12001);
    assertThat(codes(speed.cautions())).containsExactly("speed-falls");
    assertThat(speed.curve().get(1).speed().value())
        .isEqualTo(speed.curve().get(2).speed().value());
    assertThat(Unit.RPM.fromSi(speed.curve().get(1).speed().value()))
        .isCloseTo(8502.5, within(1e-9));
  }

  @Test
  void aFallWithinTheDoubtIsNotSaid() {
    Speed speed = reduce(Samples.of(), 10, 5001, 10, 5041, 20, 5005, 20, 5025, 30, 9000, 30, 9020);
    assertThat(speed.cautions()).isEmpty();
  }

  @Test
  void percentagesAreFiguresInTheirUnit() {
    SpeedReadings readings =
        readings("%", Samples.of(200), List.of(point(20, 9000), point(40, 15000)));
    Figure setting = SpeedReduction.reduce(readings, DRAWS).settingFor().get(0).setting();
    assertThat(setting.unit()).isEqualTo(Unit.PERCENT);
    assertThat(Unit.PERCENT.fromSi(setting.value())).isCloseTo(30, within(1e-9));
  }

  @Test
  void oneThatNeverTurnedIsRefused() {
    assertThatThrownBy(() -> reduce(Samples.of(), 10, 0, 20, 0))
        .isInstanceOfSatisfying(
            Refused.class, r -> assertThat(r.saying().code()).isEqualTo("speed-never-turned"));
  }

  private static double setting(Speed speed, int i) {
    return speed.settingFor().get(i).setting().value();
  }

  private static Saying why(Figure figure) {
    return ((Missing) figure).why();
  }

  private static List<String> codes(List<Saying> sayings) {
    return sayings.stream().map(Saying::code).toList();
  }

  private static Speed reduce(Samples wantedRpm, double... pairs) {
    List<SpeedReadings.Point> points = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      points.add(point(pairs[i], pairs[i + 1]));
    }
    return SpeedReduction.reduce(readings("", wantedRpm.map(Unit.RPM::toSi), points), DRAWS);
  }

  private static SpeedReadings.Point point(double setting, double rpm) {
    return new SpeedReadings.Point(setting, Unit.RPM.toSi(rpm), OptionalDouble.empty(), 1);
  }

  private static SpeedReadings.Point point(double setting, double rpm, double power) {
    return new SpeedReadings.Point(setting, Unit.RPM.toSi(rpm), OptionalDouble.of(power), 1);
  }

  private static SpeedReadings readings(
      String unit, Samples wanted, List<SpeedReadings.Point> points) {
    TrialHead head =
        new TrialHead(
            "speed.yaml", "speed", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    return new SpeedReadings(head, unit, wanted, points);
  }
}
