package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Samples;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.sideload.Compliances;
import rundlauf.reduce.sideload.Shares;
import rundlauf.reduce.sideload.SideLoad;

class ComplianceRosesTest {
  private static final Missing NONE =
      new Missing(Unit.MICROMETRE, Saying.of("side-load-no-body", ""));

  private static Drawn sure(double value, Unit unit) {
    return Drawn.of(unit, Samples.generate(400, i -> value), Map.of());
  }

  private static Compliances.Axis axis(double degrees, double umPerNewton) {
    return new Compliances.Axis(
        sure(Math.toRadians(degrees), Unit.DEGREE),
        sure(1e6 / umPerNewton, Unit.NEWTON_PER_MICROMETRE));
  }

  private static Compliances.Push push(double degrees, double dial, double umPerNewton) {
    return new Compliances.Push(
        Math.toRadians(degrees),
        Math.toRadians(dial),
        Measured.exact(umPerNewton * 1e-6, Unit.MICROMETRE_PER_NEWTON));
  }

  private static SideLoad load(Compliances compliances) {
    var head =
        new TrialHead(
            "t",
            "side-load",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            new LinkedHashMap<>());
    OptionalDouble no = OptionalDouble.empty();
    var dial =
        new IndicatorLimits("dial", 1e-5, 1e-5, Optional.empty(), no, no, no, Optional.empty());
    var readings =
        new LoadReadings(
            head,
            dial,
            Measured.exact(1, Unit.ONE),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());
    return new SideLoad(
        head,
        readings,
        NONE,
        NONE,
        NONE,
        NONE,
        Optional.empty(),
        NONE,
        NONE,
        List.of(),
        compliances,
        List.of(),
        List.of());
  }

  private static ComplianceRose rose() {
    var found =
        new Compliances(
            axis(30, 2),
            axis(120, 1),
            List.of(),
            List.of(),
            new Shares(List.of(), List.of()),
            List.of(),
            List.of(push(0, 0, 1.8), push(90, 270, 1.2), push(45, 0, 9)));
    return (ComplianceRose) ComplianceRoses.of(TrialSheet.turning("cw"), load(found)).orElseThrow();
  }

  private static double at(ComplianceRose rose, double degrees) {
    return rose.curve().get((int) Math.rint(degrees / 5)) * 1e6;
  }

  // source: by hand: 2 cos² + 1 sin² of the angle from the soft axis
  @Test
  void theCurveIsTheComplianceAlongEachDirection() {
    ComplianceRose rose = rose();
    assertThat(at(rose, 30)).isCloseTo(2, within(1e-9));
    assertThat(at(rose, 120)).isCloseTo(1, within(1e-9));
    assertThat(at(rose, 75)).isCloseTo(1.5, within(1e-9));
    assertThat(at(rose, 0)).isCloseTo(1.75, within(1e-9));
    assertThat(at(rose, 180)).isCloseTo(1.75, within(1e-9));
    assertThat(rose.low().get(0)).isCloseTo(rose.curve().get(0), within(1e-12));
    assertThat(rose.axes().get(0).compliance() * 1e6).isCloseTo(2, within(1e-9));
    assertThat(Math.toDegrees(rose.axes().get(1).angle())).isCloseTo(120, within(1e-9));
  }

  @Test
  void onlyPushesWithTheDialAlongThemAreMarked() {
    assertThat(rose().pushes())
        .extracting(p -> Math.rint(Math.toDegrees(p.angle())))
        .containsExactly(0.0, 90.0);
    assertThat(rose().twin().rows().get(1).cells().get(1))
        .isEqualTo(new Cell.Number(1.2e-6, rose().compliance()));
  }

  @Test
  void nothingIsDrawnWhereTheAxesAreNotKnown() {
    var none = Compliances.none(Saying.of("directions-too-few", "directions"));
    assertThat(ComplianceRoses.of(TrialSheet.turning("cw"), load(none))).isEmpty();
  }
}
