package rundlauf.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.runout.Runout;

class ComparingCaseTest {
  private static final Draws DRAWS = new Draws(9, 40_000);
  private static final Map<String, String> CONDITIONS =
      Map.of("pin", "ground pin 3 mm", "nut", "8 N m", "warm-up", "15 min", "turned-by", "hand");

  @Test
  void whatBothShareCancels() {
    Difference tip = tip(compare(30, 2, 25, 2, 4));
    // source: JCGM 100:2008, 5.2 and F.1.2: the dial's common part cancels: u = √2 · 2 µm, where
    // quadrature of the two would say √2 · √(2² + 4²) µm
    assertThat(tip.difference().value()).isCloseTo(5e-6, within(0.08e-6));
    assertThat(tip.difference().estimate().orElseThrow().u())
        .isCloseTo(Math.sqrt(2) * 2e-6, within(0.05e-6));
    // source: recomputed: 1 − Φ(5/(2√2)) = 0.0385
    assertThat(tip.aSmaller().orElseThrow()).isCloseTo(0.0385, within(0.004));
    assertThat(tip.fair()).isTrue();
  }

  @Test
  void aDifferenceWhoseIntervalLeavesOutNoughtIsProven() {
    Difference tip = tip(compare(30, 2, 24, 2, 4));
    // source: recomputed: Φ(6/(2√2)) = 0.983
    assertThat(tip.aSmaller().orElseThrow()).isCloseTo(1 - 0.983, within(0.003));
    assertThat(tip.difference().estimate().orElseThrow().interval().holds(0)).isFalse();
    assertThat(tip.verdict()).isEqualTo(Verdict.BETTER);
    assertThat(tip.better()).contains("Wren");
  }

  @ParameterizedTest
  @CsvSource({"26, 0.9214", "25, 0.9615"})
  void aDifferenceWhoseIntervalHoldsNoughtProvesNothing(double um, double odds) {
    Difference tip = tip(compare(30, 2, um, 2, 4));
    // source: recomputed: Φ(4/(2√2)) = 0.921, Φ(5/(2√2)) = 0.9615
    assertThat(tip.aSmaller().orElseThrow()).isCloseTo(1 - odds, within(0.006));
    assertThat(tip.difference().estimate().orElseThrow().interval().holds(0)).isTrue();
    assertThat(tip.verdict()).isEqualTo(Verdict.NOT_PROVEN);
    assertThat(tip.better()).isEmpty();
  }

  @Test
  void equalFiguresAreAsLikelyEitherWay() {
    Runout a = runout("a.yaml", CONDITIONS, 30, 0, 0);
    Difference tip = tip(compare(a, runout("b.yaml", CONDITIONS, 30, 0, 0)));
    assertThat(tip.aSmaller().orElseThrow()).isCloseTo(0.5, within(1e-9));
    assertThat(tip.verdict()).isEqualTo(Verdict.NOT_PROVEN);
  }

  @ParameterizedTest
  @CsvSource({
    "pin, ground pin 3 mm, drill blank 3 mm",
    "pin, ground pin 3 mm, ''",
    "nut, 8 N m, 12 N m",
    "warm-up, 15 min, 0 min",
    "turned-by, hand, running",
  })
  void betterIsNotSaidWhereSomethingElseDiffers(String name, String ofA, String ofB) {
    Map<String, String> a = changed(name, ofA);
    Map<String, String> b = changed(name, ofB);
    Difference tip = tip(compare(runout("a.yaml", a, 90, 2, 0), runout("b.yaml", b, 25, 2, 0)));
    assertThat(tip.verdict()).isEqualTo(Verdict.NOT_FAIR);
    assertThat(tip.better()).isEmpty();
    assertThat(tip.aSmaller().orElseThrow()).isLessThan(0.001);
    assertThat(tip.because())
        .containsExactly(
            Saying.of(
                "compare-differs",
                name,
                Arg.term(name),
                Arg.of(ofA),
                ofB.isEmpty() ? Arg.term("not-stated") : Arg.of(ofB)));
  }

  @ParameterizedTest
  @CsvSource({
    "pin, Ground  pin 3 mm",
    "nut, 8000 N mm",
    "nut, 8.5 N m",
    "warm-up, 0.25 h",
    "warm-up, 20 min",
  })
  void theSameInOtherWordsIsTheSame(String name, String ofB) {
    Runout b = runout("b.yaml", changed(name, ofB), 25, 2, 0);
    assertThat(tip(compare(runout("a.yaml", CONDITIONS, 90, 2, 0), b)).because()).isEmpty();
  }

  @Test
  void whatNeitherStatesIsSaid() {
    Map<String, String> none = changed("nut", "");
    Difference tip =
        tip(compare(runout("a.yaml", none, 90, 2, 0), runout("b.yaml", none, 25, 2, 0)));
    assertThat(tip.verdict()).isEqualTo(Verdict.BETTER);
    assertThat(tip.unsaid()).containsExactly(Saying.of("compare-not-said", "nut", Arg.term("nut")));
  }

  @Test
  void anotherTipHeightIsUnfairToTheTipOnly() {
    Runout a = runout("a.yaml", CONDITIONS, 30, 1, 0);
    Figure tir = MadeResults.tir("b.yaml", 20e-6, 1e-6, 0);
    Runout b = MadeResults.runout(head("b.yaml", CONDITIONS), 0.028, tir, tir);
    List<Difference> found = compare(a, b).pairs().get(0).differences();
    assertThat(found.get(0).figure()).isEqualTo("axis.tip.tir");
    assertThat(found.get(0).because().get(0).about()).isEqualTo("tip-height");
    assertThat(found.get(1).figure()).isEqualTo("stations.tir");
    assertThat(found.get(1).station()).hasValue(0.005);
    assertThat(found.get(1).verdict()).isEqualTo(Verdict.BETTER);
  }

  @Test
  void aFigureThatOneLacksIsMissing() {
    Figure tir = MadeResults.tir("a.yaml", 20e-6, 1e-6, 0);
    Runout a = MadeResults.runout(head("a.yaml", CONDITIONS), MadeResults.missing(), tir);
    Difference tip = tip(compare(a, runout("b.yaml", CONDITIONS, 30, 1, 0)));
    assertThat(tip.verdict()).isEqualTo(Verdict.MISSING);
    assertThat(tip.difference().known()).isFalse();
    assertThat(tip.aSmaller()).isEmpty();
  }

  @Test
  void exchangingTheSetupsExchangesTheAnswer() {
    Runout a = runout("a.yaml", CONDITIONS, 30, 2, 3);
    Runout b = runout("b.yaml", CONDITIONS, 27, 2, 3);
    Difference ab = tip(compare(a, b));
    Difference ba = tip(compare(b, a));
    assertThat(ba.difference().value()).isCloseTo(-ab.difference().value(), within(1e-15));
    assertThat(ba.aSmaller().orElseThrow())
        .isCloseTo(1 - ab.aSmaller().orElseThrow(), within(1e-9));
  }

  @Test
  void theLatestOfAKindCounts() {
    Runout old = runoutOn("old.yaml", "2026-01-02");
    Runout next = runoutOn("new.yaml", "2026-02-01");
    Runout again = runoutOn("again.yaml", "2026-02-01");
    assertThat(SetupResults.latest("Heron", List.of(next, old)).results()).containsExactly(next);
    assertThat(SetupResults.latest("Heron", List.of(old, next, again)).results())
        .containsExactly(again);
  }

  @Test
  void ofAFigureTheLatestTrialThatTellsItCounts() {
    Figure tir = MadeResults.tir("old.yaml", 20e-6, 1e-6, 0);
    Runout old =
        MadeResults.runout(MadeResults.head("old.yaml", "2026-01-02", CONDITIONS), tir, tir);
    Runout next =
        MadeResults.runout(
            MadeResults.head("new.yaml", "2026-02-01", CONDITIONS), MadeResults.missing(), tir);
    SetupResults heron = SetupResults.latest("Heron", List.of(next, old));
    Trait tip = trait("axis.tip.tir");
    assertThat(tip.of(heron)).isEqualTo(tir);
    assertThat(tip.earlier(heron)).contains(old);
    assertThat(trait("axis.tilt").earlier(heron)).isEmpty();
    SetupResults wren = new SetupResults("Wren", List.of(runout("b.yaml", CONDITIONS, 25, 2, 0)));
    Difference found = tip(Comparing.compare(List.of(heron, wren), DRAWS));
    assertThat(found.ofA()).isEqualTo(tir);
    assertThat(found.aFile()).isEqualTo("old.yaml");
    assertThat(found.bFile()).isEqualTo("b.yaml");
  }

  private static Trait trait(String path) {
    return Trait.ALL.stream().filter(t -> t.path().equals(path)).findFirst().orElseThrow();
  }

  @Test
  void everySetupMeetsEveryOtherOnce() {
    List<SetupResults> three =
        List.of(
            new SetupResults("Heron", List.of()),
            new SetupResults("Wren", List.of()),
            new SetupResults("Dunlin", List.of()));
    Comparison found = Comparing.compare(three, DRAWS);
    assertThat(found.pairs().stream().map(p -> p.a() + "-" + p.b()))
        .containsExactly("Heron-Wren", "Heron-Dunlin", "Wren-Dunlin");
    assertThat(found.pairs().get(0).differences()).isEmpty();
  }

  @Test
  void verdictsAreWrittenWithHyphens() {
    assertThat(Verdict.NOT_PROVEN.code()).isEqualTo("not-proven");
    assertThat(Verdict.BETTER.code()).isEqualTo("better");
  }

  private static Map<String, String> changed(String name, String value) {
    Map<String, String> all = new java.util.LinkedHashMap<>(CONDITIONS);
    all.put(name, value);
    all.values().removeIf(String::isEmpty);
    return all;
  }

  private static Runout runoutOn(String file, String date) {
    Figure tir = MadeResults.tir(file, 20e-6, 1e-6, 0);
    return MadeResults.runout(MadeResults.head(file, date, CONDITIONS), tir, tir);
  }

  private static TrialHead head(String file, Map<String, String> conditions) {
    return MadeResults.head(file, "2026-01-01", conditions);
  }

  private static Runout runout(
      String file, Map<String, String> conditions, double um, double scatter, double dial) {
    Figure tir =
        MadeResults.tir(
            file,
            Unit.MICROMETRE.toSi(um),
            Unit.MICROMETRE.toSi(scatter),
            Unit.MICROMETRE.toSi(dial));
    return MadeResults.runout(head(file, conditions), tir, tir);
  }

  private static Comparison compare(double a, double sa, double b, double sb, double dial) {
    return compare(
        runout("a.yaml", CONDITIONS, a, sa, dial), runout("b.yaml", CONDITIONS, b, sb, dial));
  }

  private static Comparison compare(Runout a, Runout b) {
    return Comparing.compare(
        List.of(new SetupResults("Heron", List.of(a)), new SetupResults("Wren", List.of(b))),
        DRAWS);
  }

  private static Difference tip(Comparison comparison) {
    Difference first = comparison.pairs().get(0).differences().get(0);
    assertThat(first.figure()).isEqualTo("axis.tip.tir");
    return first;
  }
}
