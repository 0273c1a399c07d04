package rundlauf.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Bench;
import rundlauf.bench.Cutter;
import rundlauf.bench.Holder;
import rundlauf.bench.Setup;
import rundlauf.bench.Span;
import rundlauf.bench.Spindle;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** A setup that is put together wrongly is said to be, and a right one is left in peace. */
class SetupCautionsTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final Setup SETUP =
      new Setup(
          "Heron ER11",
          "Heron",
          Optional.of("ER11 3 mm"),
          Optional.of("two-flute"),
          Optional.empty(),
          Optional.empty());

  // source: common practice, no source: a 3.175 mm (1/8 in) shank does not belong in a 3 mm collet
  @ParameterizedTest
  @CsvSource({"3.175, shank-too-thick", "2.35, shank-too-thin", "3, ''", "2.5, ''", "3.006, ''"})
  void aShankBelongsInItsHoldersRange(double shankMm, String code) {
    var said = SetupCautions.of(bench(shankMm, 50_000, 50_000), SETUP, NONE, NONE);
    assertThat(said.stream().map(Saying::code)).containsExactly(words(code));
  }

  @Test
  void theCautionNamesShankHolderAndLimit() {
    assertThat(SetupCautions.of(bench(3.175, 50_000, 50_000), SETUP, NONE, NONE))
        .containsExactly(
            Saying.of(
                "shank-too-thick",
                "setup",
                Arg.of(0.003175, Unit.MILLIMETRE),
                Arg.of("ER11 3 mm"),
                Arg.of(0.003, Unit.MILLIMETRE)));
  }

  @ParameterizedTest
  @CsvSource({
    "20000, 50000, cutter-too-fast",
    "50000, 20000, holder-too-fast",
    "24000, 24000, ''",
    "20000, 20000, cutter-too-fast holder-too-fast"
  })
  void nothingMayTurnFasterThanItsMakerAllows(double cutterRpm, double nutRpm, String codes) {
    var said = SetupCautions.of(bench(3, cutterRpm, nutRpm), SETUP, NONE, NONE);
    assertThat(said.stream().map(Saying::code)).containsExactly(words(codes));
  }

  @Test
  void aSpeedMeasuredOverTheLabelCounts() {
    var said =
        SetupCautions.of(bench(3, 25_000, 50_000), SETUP, NONE, OptionalDouble.of(26_000 / 60.0));
    assertThat(said.stream().map(Saying::code)).containsExactly("cutter-too-fast");
  }

  @ParameterizedTest
  @CsvSource({"3.175, pin-other-than-shank", "3, ''", "2.994, ''", "6, pin-other-than-shank"})
  void aPinOfAnotherDiameterIsNotTheShank(double pinMm, String code) {
    var bench = bench(3, 50_000, 50_000);
    var said = SetupCautions.of(bench, SETUP, OptionalDouble.of(pinMm * 1e-3), NONE);
    assertThat(said.stream().map(Saying::code)).containsExactly(words(code));
  }

  @Test
  void whatTheBenchDoesNotSayIsNotHeldAgainstIt() {
    var bare =
        new Setup(
            "Heron",
            "Heron",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThat(SetupCautions.of(bench(3.175, 1, 1), bare, OptionalDouble.of(0.006), NONE))
        .isEmpty();
  }

  private static String[] words(String codes) {
    return codes.isEmpty() ? new String[0] : codes.split(" ");
  }

  private static Bench bench(double shankMm, double cutterRpm, double nutRpm) {
    return new Bench(
        "bench.yaml",
        "invented",
        Optional.empty(),
        List.of(heron()),
        List.of(collet(nutRpm)),
        List.of(cutter(shankMm, cutterRpm)),
        List.of(),
        List.of(),
        List.of(),
        List.of(SETUP),
        List.of(),
        Optional.empty(),
        List.of());
  }

  private static Spindle heron() {
    return new Spindle(
        "Heron",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(new Span(rpm(6000), rpm(24_000))),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Holder collet(double maxRpm) {
    return new Holder(
        "ER11 3 mm",
        Optional.of("collet"),
        Optional.empty(),
        Optional.of(mm(3)),
        Optional.of(new Span(mm(2.5), mm(3))),
        Optional.empty(),
        Optional.empty(),
        Optional.of(rpm(maxRpm)),
        Optional.empty());
  }

  private static Cutter cutter(double shankMm, double maxRpm) {
    return new Cutter(
        "two-flute",
        Optional.empty(),
        Optional.empty(),
        OptionalInt.of(2),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(mm(shankMm)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(rpm(maxRpm)),
        Optional.empty());
  }

  private static Quantity mm(double value) {
    return Quantity.exact(Unit.MILLIMETRE.toSi(value), Unit.MILLIMETRE);
  }

  private static Quantity rpm(double value) {
    return Quantity.exact(Unit.RPM.toSi(value), Unit.RPM);
  }
}
