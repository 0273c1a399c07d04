package rundlauf.character;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Bench;
import rundlauf.bench.Cut;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.SpeedReadings;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.speed.Speed;
import rundlauf.safety.Inspection;
import rundlauf.safety.Standing;

/** Traits worked by hand. */
class CharacterCaseTest {
  private static final String SETUP = "Heron 3 mm";

  @Test
  void theAssumedTiltIsThePermittedRunoutOverItsDistance() throws IOException {
    // source: ISO 15488 Table 4, as quoted on a collet maker's technical page; class 2
    List<String> rows =
        Files.readAllLines(Path.of("../cases/metrology/iso15488_collet_runout.csv"));
    int checked = 0;
    for (String row : rows) {
      if (row.matches("[0-9.,]+")) {
        String[] cells = row.split(",");
        double diameter = Double.parseDouble(cells[1]) * 1e-3;
        double mean = Double.parseDouble(cells[4]) / 2 / Double.parseDouble(cells[2]);
        // source: from memory: the mean of a Rayleigh distribution is sigma times √(π/2)
        assertThat(PermittedTilt.component(Optional.of(diameter)) * Math.sqrt(Math.PI / 2))
            .isCloseTo(mean, within(1e-12));
        checked++;
      }
    }
    assertThat(checked).isEqualTo(6);
    assertThat(PermittedTilt.component(Optional.empty()))
        .isEqualTo(PermittedTilt.component(Optional.of(1e-3)));
  }

  @Test
  void powerAtTheShaftIsInputTimesTypedEfficiency() {
    SetupCharacter setup = MadeBench.heron(SETUP, 20, List.of());
    // source: recomputed: 800 W · 0.75
    assertThat(setup.power().figure().value()).isCloseTo(600, within(1e-9));
    assertThat(setup.power().origin()).isEqualTo(Origin.ENTERED);
    assertThat(setup.powerAt().figure().value()).isEqualTo(400);
  }

  @ParameterizedTest
  @CsvSource({
    "brushed-dc, 560, 80",
    "universal, 440, 120",
    "brushless, 640, 80",
    "induction, 560, 80",
    "other, 480, 160"
  })
  void withoutOneTheDrivesIsAssumedAndSaid(String drive, double watts, double half) {
    // source: from memory: usual efficiencies of small motors, of 800 W of input
    Trait power = character(Optional.of(drive)).power();
    Measured figure = (Measured) power.figure();
    assertThat(figure.value()).isCloseTo(watts, within(1e-9));
    assertThat(figure.u()).isCloseTo(half / Math.sqrt(3), within(1e-9));
    assertThat(power.assumed()).isTrue();
    assertThat(power.from().get(0).args().toString()).contains("drive-" + drive);
  }

  @Test
  void aDriveNobodyNamedCountsAsAnyOther() {
    assertThat(character(Optional.empty()).power().figure().value()).isCloseTo(480, within(1e-9));
  }

  private static SetupCharacter character(Optional<String> drive) {
    Bench bench =
        MadeBench.bench(MadeBench.spindle("Heron", drive, Optional.empty(), Optional.empty()));
    return MeasuredCharacter.of(
        bench, bench.setup(SETUP).orElseThrow(), List.of(), MadeBench.mm(20), Draws.DEFAULT);
  }

  @Test
  void speedsAreThoseOfTheTrialOnWhateverSetupOfTheSpindleElseOfTheLabel() {
    SetupCharacter measured = MadeBench.heron(SETUP, 20, List.of(speed("Heron chuck", 0.02)));
    assertThat(measured.slowest().figure().value()).isEqualTo(110);
    assertThat(measured.fastest().figure().value()).isEqualTo(390);
    assertThat(measured.fastest().origin()).isEqualTo(Origin.MEASURED);
    SetupCharacter label = MadeBench.heron(SETUP, 20, List.of(speed("Wren 3 mm", 0.02)));
    assertThat(label.slowest().figure().value()).isEqualTo(100);
    assertThat(label.fastest().figure().value()).isEqualTo(400);
    assertThat(label.fastest().from().get(0).code()).isEqualTo("speed-of-label");
  }

  @Test
  void aWattAtTheShaftDroopsMoreThanOneAtThePlug() {
    Trait droop = MadeBench.heron(SETUP, 20, List.of(speed(SETUP, 0.03))).droop();
    // source: recomputed: 0.03 turns/s/W at the plug over an efficiency of 0.75
    assertThat(droop.figure().value()).isCloseTo(0.04, within(1e-12));
    assertThat(droop.origin()).isEqualTo(Origin.MEASURED);
  }

  @Test
  void whetherItMayBePoweredIsAskedOfTheWholeSpindle() {
    SetupCharacter nobody = MadeBench.heron(SETUP, 20, List.of());
    assertThat(nobody.standing()).contains(Standing.NOT_INSPECTED);
    assertThat(nobody.cautions()).extracting(Saying::code).contains("spindle-not-inspected");
    SetupCharacter held = MadeBench.heron(SETUP, 20, List.of(inspection("Heron chuck", true)));
    assertThat(held.standing()).contains(Standing.HELD);
    assertThat(held.because()).extracting(Saying::code).containsExactly("inspection-fault");
    assertThat(held.cautions()).extracting(Saying::code).contains("spindle-held");
    SetupCharacter good = MadeBench.heron(SETUP, 20, List.of(inspection(SETUP, false)));
    assertThat(good.standing()).contains(Standing.INSPECTED);
    assertThat(good.cautions()).isEmpty();
    SetupCharacter other = MadeBench.heron(SETUP, 20, List.of(inspection("Wren 3 mm", true)));
    assertThat(other.standing()).contains(Standing.NOT_INSPECTED);
  }

  private static Speed speed(String setup, double droop) {
    var head = MadeBench.head("speed.yaml", "speed", "2026-03-01", setup);
    return new Speed(
        head,
        new SpeedReadings(head, "", Samples.of(), List.of()),
        List.of(),
        Measured.exact(110, Unit.RPM),
        Measured.exact(390, Unit.RPM),
        List.of(),
        Measured.exact(droop, Unit.RPM_PER_WATT),
        new Missing(Unit.ONE, Saying.of("made-missing", "")),
        new Missing(Unit.ONE, Saying.of("made-missing", "")),
        List.of(),
        List.of());
  }

  private static Reduced inspection(String setup, boolean hold) {
    var head = MadeBench.head("inspection.yaml", "inspection", "2026-03-01", setup);
    return new Inspection(
        head,
        new InspectionReadings(head, List.of()),
        hold,
        hold ? List.of(Saying.of("inspection-fault", "")) : List.of(),
        List.of(),
        List.of());
  }

  @Test
  void aDescribedSetupIsWhatWasTypedAndSaysWhatWasNot() {
    var given =
        new Cut.SetupGiven(
            Optional.of(new Quantity(12e-6, 3e-6, Unit.MICROMETRE)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Quantity.exact(0.8e6, Unit.NEWTON_PER_MICROMETRE)),
            Optional.of(Quantity.exact(0.8e6, Unit.NEWTON_PER_MICROMETRE)),
            Optional.empty(),
            Optional.of(Quantity.exact(400, Unit.RPM)),
            Optional.of(Quantity.exact(300, Unit.WATT)),
            Optional.empty(),
            List.of());
    SetupCharacter setup = EnteredCharacter.of(given, "cut/a.yaml", Draws.DEFAULT);
    Samples e = setup.eccentricity().draws(Draws.DEFAULT, 0);
    // source: JCGM 100:2008, 4.3.7: a rectangular distribution within its limits, u = half-width/√3
    assertThat(e.min()).isBetween(9e-6, 9.1e-6);
    assertThat(e.max()).isBetween(14.9e-6, 15e-6);
    assertThat(e.standardDeviation()).isCloseTo(3e-6 / Math.sqrt(3), within(0.05e-6));
    assertThat(((Measured) setup.eccentricity().figure()).effects().keySet())
        .extracting(cause -> cause.id())
        .containsExactly("cut/a.yaml/eccentricity");
    assertThat(setup.stiffnessX()).isSameAs(setup.stiffnessY());
    assertThat(setup.firstTooth().from().get(0).code()).isEqualTo("first-tooth-anywhere");
    assertThat(setup.tilt().from().get(0).code()).isEqualTo("tilt-assumed-zero");
    assertThat(setup.tiltAngle().assumed()).isFalse();
    assertThat(setup.powerAt().figure().value()).isEqualTo(400);
    assertThat(setup.powerAt().from().get(0).code()).isEqualTo("power-at-fastest");
    assertThat(setup.slowest().known()).isFalse();
    assertThat(setup.standing()).isEmpty();
  }

  @Test
  void nothingTypedIsNothingKnownButThatItRunsTrue() {
    Optional<Quantity> no = Optional.empty();
    var given = new Cut.SetupGiven(no, no, no, no, no, no, no, no, no, no, List.of());
    SetupCharacter setup = EnteredCharacter.of(given, "cut/a.yaml", Draws.DEFAULT);
    assertThat(setup.eccentricity().figure().value()).isZero();
    assertThat(setup.eccentricity().from().get(0).code()).isEqualTo("eccentricity-assumed-zero");
    assertThat(setup.stiffnessX().known()).isFalse();
    assertThat(setup.fastest().known()).isFalse();
    assertThat(setup.power().known()).isFalse();
    assertThat(setup.droop().known()).isFalse();
  }

  @Test
  void aTiltWithoutItsAngleLeansAnywhere() {
    Optional<Quantity> no = Optional.empty();
    var tilt = Optional.of(Quantity.exact(0.2e-3, Unit.MICROMETRE_PER_MILLIMETRE));
    var given = new Cut.SetupGiven(no, no, tilt, no, no, no, no, no, no, no, List.of());
    Trait angle = EnteredCharacter.of(given, "cut/a.yaml", Draws.DEFAULT).tiltAngle();
    assertThat(angle.from().get(0).code()).isEqualTo("tilt-angle-anywhere");
    assertThat(angle.draws(Draws.DEFAULT, 0).standardDeviation())
        .isCloseTo(2 * Math.PI / Math.sqrt(12), within(0.01));
  }
}
