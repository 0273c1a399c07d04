package rundlauf.safety.norm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.safety.norm.MadeCollet.HALF_TURNS;
import static rundlauf.safety.norm.MadeCollet.PIN;
import static rundlauf.safety.norm.MadeCollet.TWICE;
import static rundlauf.safety.norm.MadeCollet.UM;
import static rundlauf.safety.norm.MadeCollet.codes;
import static rundlauf.safety.norm.MadeCollet.collet;
import static rundlauf.safety.norm.MadeCollet.runout;
import static rundlauf.safety.norm.MadeCollet.verdict;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Setup;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Unit;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.NormVerdict.Outcome;
import rundlauf.reduce.runout.Runout;

/** Whether a collet keeps its norm, and when that is left open. */
class ColletRunoutLawTest {
  private static final Draws FEW = new Draws(5, 1000);

  private static Runout read(double um, double station, String clocks) {
    return runout(1, um, station, clocks, Draws.DEFAULT);
  }

  // source: ISO 15488 Table 4, as quoted on a collet maker's technical page: class 2 at 3.175 mm
  @ParameterizedTest
  @CsvSource({"1.5, PROVEN", "7.5, NOT_PROVEN", "20, DISPROVEN"})
  void aColletOfKnownTruthIsJudgedRightly(double um, Outcome outcome) {
    NormVerdict verdict = verdict(collet(), read(um, 16, TWICE), PIN);
    assertThat(verdict.outcome()).isEqualTo(outcome);
    assertThat(verdict.norm()).isEqualTo("ISO 15488 Table 4, class 2");
    assertThat(verdict.about()).isEqualTo("made collet");
    assertThat(verdict.limit().value()).isCloseTo(15 * UM, within(1e-12));
    assertThat(verdict.figure().value()).isCloseTo(2 * um * UM, within(4 * UM));
    assertThat(codes(verdict))
        .containsExactly(
            "norm-" + outcome.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
            "norm-collet-pin-unsaid");
  }

  @Test
  void theFigureIsTwiceThePartsEccentricityWithItsDoubt() {
    Runout runout = read(20, 16, TWICE);
    NormVerdict verdict = verdict(collet(), runout, PIN);
    var part = runout.parts().get(1).eccentricity().estimate().orElseThrow();
    var tir = verdict.figure().estimate().orElseThrow();
    assertThat(tir.value()).isEqualTo(2 * part.value());
    assertThat(tir.interval().high()).isEqualTo(2 * part.interval().high());
    assertThat(verdict.figure().unit()).isEqualTo(Unit.MICROMETRE);
  }

  @ParameterizedTest
  @CsvSource({"1, 10, class 1", "class 1, 10, class 1", "2, 15, class 2", "UP, 15, class 2"})
  void theClassIsTheHoldersAndTwoWhereItIsNone(String grade, double limit, String norm) {
    Runout runout = MadeCollet.onPin(read(20, 16, TWICE), "ground pin");
    NormVerdict verdict = verdict(collet("collet", "er-11", 3.175, grade), runout, PIN);
    assertThat(verdict.limit().value()).isCloseTo(limit * UM, within(1e-12));
    assertThat(verdict.norm()).endsWith(norm);
    assertThat(codes(verdict).contains("norm-collet-class-unknown")).isEqualTo(grade.equals("UP"));
    assertThat(codes(verdict)).doesNotContain("norm-collet-pin-unsaid");
  }

  @Test
  void joinedPartsAreNotDecidedAndTheClampingsThatWouldDecideItAreNamed() {
    NormVerdict one = verdict(collet(), read(20, 16, "0 0"), PIN);
    assertThat(one.outcome()).isEqualTo(Outcome.NOT_DECIDED);
    assertThat(one.probability()).isEmpty();
    assertThat(one.figure().known()).isFalse();
    assertThat(one.limit().known()).isTrue();
    assertThat(codes(one)).containsExactly("norm-collet-joined", "parts-three-more-clampings");
    assertThat(codes(verdict(collet(), read(20, 16, "0 0, 0 180, 0 90"), PIN)))
        .containsExactly("norm-collet-joined", "parts-one-more-clamping");
  }

  @Test
  void theColletAloneWillDoWhereTheShankWasNotTurned() {
    assertThat(verdict(collet(), read(40, 16, "0 0, 180 0, 0 0, 180 0"), PIN).outcome())
        .isEqualTo(Outcome.DISPROVEN);
  }

  @ParameterizedTest
  @CsvSource({"15.5, true", "16.5, true", "15.4, false", "16.6, false", "10, false"})
  void theNormsDistanceIsAskedForToHalfAMillimetre(double station, boolean decided) {
    NormVerdict verdict = verdict(collet(), read(20, station, HALF_TURNS), PIN);
    assertThat(verdict.outcome() != Outcome.NOT_DECIDED).isEqualTo(decided);
    if (!decided) {
      assertThat(codes(verdict)).containsExactly("norm-collet-elsewhere");
      assertThat(verdict.said().get(0).args())
          .containsExactly(
              Arg.of(0.016, Unit.MILLIMETRE),
              Arg.of(0.0005, Unit.MILLIMETRE),
              Arg.of(station * 1e-3, Unit.MILLIMETRE));
    }
  }

  // source: from memory: ISO 286-2, h6 over 3 up to 6 mm: 0 to -8 um
  @ParameterizedTest
  @CsvSource({
    "3.175, ''",
    "3.167, ''",
    "3.166, norm-collet-other-pin",
    "3.18, norm-collet-other-pin",
    "3, norm-collet-other-pin",
    ", norm-collet-no-pin"
  })
  void thePinIsTheBoresSize(Double pin, String code) {
    OptionalDouble given = pin == null ? OptionalDouble.empty() : OptionalDouble.of(pin * 1e-3);
    NormVerdict verdict = verdict(collet(), read(20, 16, TWICE), given);
    assertThat(verdict.outcome() == Outcome.NOT_DECIDED).isEqualTo(!code.isEmpty());
    if (!code.isEmpty()) {
      assertThat(codes(verdict)).containsExactly(code);
    }
  }

  @Test
  void whatTheNormDoesNotKnowIsNotDecidedAndOtherHoldersGetNoVerdict() {
    Runout runout = read(20, 16, TWICE);
    assertThat(codes(verdict(collet("collet", "ER11", null, null), runout, PIN)))
        .containsExactly("norm-collet-no-bore");
    assertThat(codes(verdict(collet("collet", "ER11", 0.8, null), runout, PIN)))
        .containsExactly("norm-collet-no-row");
    assertThat(ColletRunout.of(collet("chuck", "ER11", 3.175, null), runout, PIN)).isEmpty();
    assertThat(ColletRunout.of(collet("collet", null, 3.175, null), runout, PIN)).isEmpty();
    assertThat(ColletRunout.of(collet("collet", "5C", 3.175, null), runout, PIN)).isEmpty();
  }

  @Test
  void aDisprovenNormIsACautionAndAnotherOutcomeNone() {
    var bench = MadeCollet.bench(MadeCollet.spindle(Optional.empty()), collet(), List.of());
    Setup setup = MadeCollet.SETUP;
    Runout bad = Norms.judged(bench, setup, read(20, 16, TWICE), PIN);
    assertThat(bad.cautions()).containsExactly(bad.verdicts().get(0).said().get(0));
    assertThat(bad.cautions().get(0).code()).isEqualTo("norm-disproven");
    assertThat(Norms.judged(bench, setup, read(7.5, 16, TWICE), PIN).cautions()).isEmpty();
  }

  @Test
  void ofSeveralTrialsTheLatestThatDecidesCounts() {
    var bench = MadeCollet.bench(MadeCollet.spindle(Optional.empty()), collet(), List.of());
    Runout told = Norms.judged(bench, MadeCollet.SETUP, read(20, 16, TWICE), PIN);
    Runout open = Norms.judged(bench, MadeCollet.SETUP, read(20, 16, "0 0"), PIN);
    assertThat(Norms.latest(List.of(told, open))).isEqualTo(told.verdicts());
    assertThat(Norms.latest(List.of(open, told))).isEqualTo(told.verdicts());
    assertThat(Norms.latest(List.of(open))).isEqualTo(open.verdicts());
    assertThat(
            Norms.latest(
                List.of(MadeCollet.on(told, "2026-03-02"), MadeCollet.on(open, "2026-03-01"))))
        .isEqualTo(told.verdicts());
    Runout better = Norms.judged(bench, MadeCollet.SETUP, read(1.5, 16, TWICE), PIN);
    assertThat(
            Norms.latest(
                List.of(MadeCollet.on(told, "2026-03-02"), MadeCollet.on(better, "2026-03-01"))))
        .isEqualTo(told.verdicts());
  }

  @Test
  void aColletAtItsLimitIsSeldomCalledProvenOrDisproven() {
    atTheLimit(1, 60, TWICE);
  }

  @Test
  @Tag("long")
  void norInManyTrials() {
    atTheLimit(1000, 400, TWICE);
    atTheLimit(2000, 400, HALF_TURNS);
  }

  /** Of trials with a collet exactly at the limit; three standard deviations are let pass. */
  private static void atTheLimit(long seed, int trials, String clocks) {
    int proven = 0;
    int disproven = 0;
    for (int k = 0; k < trials; k++) {
      Outcome outcome = verdict(collet(), runout(seed + k, 7.5, 16, clocks, FEW), PIN).outcome();
      proven += outcome == Outcome.PROVEN ? 1 : 0;
      disproven += outcome == Outcome.DISPROVEN ? 1 : 0;
    }
    double most = 0.05 * trials + 3 * Math.sqrt(0.05 * 0.95 * trials);
    assertThat(proven).as("proven of " + trials).isLessThanOrEqualTo((int) most);
    assertThat(disproven).as("disproven of " + trials).isLessThanOrEqualTo((int) most);
  }
}
