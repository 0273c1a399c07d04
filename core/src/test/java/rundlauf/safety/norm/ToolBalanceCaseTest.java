package rundlauf.safety.norm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.safety.norm.MadeCollet.codes;
import static rundlauf.safety.norm.MadeCollet.cutter;
import static rundlauf.safety.norm.MadeCollet.spindle;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Spindle;
import rundlauf.maths.Draws;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.NormVerdict.Outcome;
import rundlauf.reduce.runout.Runout;

/** What a tool off the axis adds, against the grade of machine-tool drives. */
class ToolBalanceCaseTest {
  private static final Optional<Quantity> CARBIDE =
      Optional.of(Quantity.exact(580e9, Unit.GIGAPASCAL));
  private static final Runout READ = MadeCollet.runout(1, 20, 16, MadeCollet.TWICE, Draws.DEFAULT);

  private static Optional<Quantity> grams(double value) {
    return Optional.of(Quantity.exact(value * 1e-3, Unit.GRAM));
  }

  private static NormVerdict verdict(Optional<Quantity> rotor, Optional<Quantity> modulus) {
    return ToolBalance.of(spindle(rotor), MadeCollet.SETUP, cutter(modulus), READ);
  }

  @Test
  void theToolsShareIsItsMassTimesItsEccentricityOverTheRotors() {
    NormVerdict verdict = verdict(grams(300), CARBIDE);
    // source: recomputed: carbide 14 500 kg/m3 · π/4 · ((0.8 · 3)² · 9 + 3.175² · 9) mm3 = 1.624 g
    double mass = 14_500 * Math.PI / 4 * (2.4 * 2.4 * 9 + 3.175 * 3.175 * 9) * 1e-9;
    double e = READ.nextClamping().eccentricity().value();
    assertThat(verdict.figure().value()).isCloseTo(e * mass / 0.3, within(1e-12));
    // source: recomputed: e_per = 9549.297 · 2.5 / 24 000 um, ISO 21940-11
    assertThat(verdict.limit().value()).isCloseTo(0.99472e-6, within(1e-11));
    assertThat(verdict.norm()).isEqualTo("ISO 21940-11 G2.5");
    assertThat(verdict.outcome()).isEqualTo(Outcome.PROVEN);
    assertThat(codes(verdict)).containsExactly("norm-balance-proven", "norm-balance-of-tool");
  }

  @Test
  void aLightRotorDoesNotKeepIt() {
    assertThat(verdict(grams(10), CARBIDE).outcome()).isEqualTo(Outcome.DISPROVEN);
  }

  @Test
  void limitsOfTheRotorsMassWidenTheFigureAndLeaveItsValue() {
    NormVerdict exact = verdict(grams(300), CARBIDE);
    NormVerdict loose = verdict(Optional.of(new Quantity(0.3, 0.1, Unit.GRAM)), CARBIDE);
    assertThat(loose.figure().value()).isCloseTo(exact.figure().value(), within(1e-15));
    assertThat(high(loose)).isGreaterThan(1.05 * high(exact));
    assertThat(loose.outcome()).isEqualTo(Outcome.PROVEN);
  }

  @Test
  void aRotorThatMayBeLightOrHeavyIsNeitherProvenNorDisproven() {
    double e = READ.nextClamping().eccentricity().value();
    double tool = verdict(grams(1000), CARBIDE).figure().value() / e;
    double just = tool * e / 0.99472e-6;
    Optional<Quantity> wide = Optional.of(new Quantity(just, 0.95 * just, Unit.GRAM));
    assertThat(verdict(wide, CARBIDE).outcome()).isEqualTo(Outcome.NOT_PROVEN);
    // source: recomputed: e known, a rotor uniform over just ± 95 % keeps the grade half the time
    assertThat(verdict(wide, CARBIDE).probability().orElseThrow()).isCloseTo(0.5, within(0.1));
  }

  private static double high(NormVerdict verdict) {
    return verdict.figure().estimate().orElseThrow().interval().high();
  }

  @Test
  void withoutWhatItNeedsNoGradeIsGiven() {
    NormVerdict open = verdict(Optional.empty(), CARBIDE);
    assertThat(open.outcome()).isEqualTo(Outcome.NOT_DECIDED);
    assertThat(open.limit().known()).isFalse();
    assertThat(open.figure().known()).isFalse();
    assertThat(codes(open)).containsExactly("norm-balance-no-rotor-mass");
    assertThat(codes(verdict(grams(300), Optional.empty())))
        .containsExactly("norm-balance-no-cutter");
    Spindle plain = spindle(grams(300));
    Spindle unlabelled =
        new Spindle(
            plain.name(),
            plain.drive(),
            plain.rotation(),
            plain.input(),
            plain.efficiency(),
            plain.supply(),
            plain.control(),
            Optional.empty(),
            plain.nose(),
            plain.rotorMass(),
            plain.notes());
    assertThat(codes(ToolBalance.of(unlabelled, MadeCollet.SETUP, cutter(CARBIDE), READ)))
        .containsExactly("norm-balance-no-speed");
  }
}
