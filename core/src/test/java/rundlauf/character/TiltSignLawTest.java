package rundlauf.character;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.character.SetupCharacter.TiltOf;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.chip.EdgeRadii;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** The axis as an indicator sees it and the edges as a chip sees them are one thing. */
class TiltSignLawTest {
  private static final Tool TOOL = new Tool(3e-3, 3, Math.toRadians(30), 9e-3, 20e-3, 3e-3, 580e9);
  private static final int DRAWS = 200;

  /**
   * Offset at the tip [µm] and its high spot [deg], tilt outward [µm/mm] and its high spot [deg],
   * how far tooth 1 at the tip stands ahead of the offset's high spot [deg].
   */
  @ParameterizedTest
  @CsvSource({
    "12, 30, 0.4, 30, 0",
    "12, 30, 0.4, 210, 75",
    "20, 250, 1.5, 40, 200",
    "5, 359, 0.2, 1, 330",
    "0, 0, 1, 90, 10"
  })
  void everyEdgeStandsWhereTheIndicatorSawTheAxis(
      double e, double spot, double t, double leans, double first) {
    DrawnVector offset = vector(e * 1e-6, spot);
    DrawnVector tilt = vector(t * 1e-3, leans);
    double ahead = Math.toRadians(first);
    var state =
        character(e * 1e-6, ahead, t * 1e-3, MeasuredRunout.ahead(offset, tilt).value())
            .central(ahead);
    EdgeRadii edges =
        EdgeRadii.of(
            TOOL,
            new ToolRunout(
                state.eccentricity(), state.firstTooth(), state.tilt(), state.tiltAngle()));
    for (int k = 0; k < 3; k++) {
      for (double z = 0; z <= 5e-3; z += 1e-3) {
        // Tooth k + 1 follows tooth k, and an edge lags with height (contract 4): it comes to the
        // indicator so much later. The indicator reads E(h) = a + i b, h = stickout − z, as
        // a cos θ + b sin θ; the tooth ahead of the high spot comes to it before.
        double theta = Math.toRadians(spot) - ahead + k * 2 * Math.PI / 3 + TOOL.lag() * z;
        double a = offset.a().get(0) - tilt.a().get(0) * z;
        double b = offset.b().get(0) - tilt.b().get(0) * z;
        assertThat(edges.at(k, z))
            .as("tooth %d at %f", k, z)
            .isCloseTo(
                TOOL.diameter() / 2 + a * Math.cos(theta) + b * Math.sin(theta), within(1e-15));
      }
    }
  }

  private static DrawnVector vector(double size, double degrees) {
    double angle = Math.toRadians(degrees);
    // At no size the angle is that of the positive axis, as the test's tooth counts from it.
    return new DrawnVector(
        Samples.generate(DRAWS, i -> size * Math.cos(angle)),
        Samples.generate(DRAWS, i -> size * Math.sin(angle)),
        Map.of());
  }

  private static SetupCharacter character(double e, double first, double tilt, double angle) {
    Trait none = Trait.missing(Unit.ONE, Saying.of("made-missing", ""));
    return new SetupCharacter(
        "made",
        exact(e, Unit.MICROMETRE),
        exact(first, Unit.DEGREE),
        exact(tilt, Unit.MICROMETRE_PER_MILLIMETRE),
        exact(angle, Unit.DEGREE),
        TiltOf.HIGH_SPOT,
        none,
        none,
        none,
        none,
        none,
        none,
        none,
        Optional.empty(),
        List.of(),
        List.of());
  }

  private static Trait exact(double value, Unit unit) {
    return Trait.measured(Measured.exact(value, unit));
  }

  @ParameterizedTest
  @CsvSource({"12", "200", "4000"})
  void anAngleNobodyKnowsIsEvenlySpreadFromTheFirstDrawsOn(int count) {
    Samples angles = FirstTooth.anywhere("made", Draws.DEFAULT).draws(Draws.DEFAULT, 0);
    int[] bins = new int[4];
    for (int i = 0; i < count; i++) {
      assertThat(angles.get(i)).isBetween(0.0, 2 * Math.PI);
      bins[(int) (angles.get(i) / (Math.PI / 2))]++;
    }
    for (int bin : bins) {
      assertThat(bin).isBetween(count / 4 - 2, count / 4 + 2);
    }
  }
}
