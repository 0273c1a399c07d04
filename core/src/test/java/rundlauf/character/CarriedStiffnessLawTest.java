package rundlauf.character;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Bench;
import rundlauf.bench.Spindle;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Lever;
import rundlauf.simulated.LoadBench;
import rundlauf.simulated.LoadPlan;
import rundlauf.simulated.Nose;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Shank;

/** How a stiffness measured at one distance is carried to another. */
class CarriedStiffnessLawTest {
  private static final double UM = 1e-6;
  private static final String SETUP = "Heron 3 mm";

  /** Arms good to one part in six: what both trials share is what counts. */
  private static final Lever LEVER = new Lever(0.5, 0, 180e-3, 30e-3, 60e-3, 0);

  @Test
  void pushedAtTheTipItIsWhatWasMeasured() {
    SideLoad load = load("a.yaml", SETUP, Nose.clean(0.6e6));
    SetupCharacter setup = MadeBench.heron(SETUP, 10, List.of(load));
    assertThat(setup.stiffnessX().figure()).isSameAs(load.setupStiffness());
    assertThat(setup.stiffnessX().origin()).isEqualTo(Origin.MEASURED);
    assertThat(codes(setup.stiffnessY())).containsExactly("stiffness-one-direction");
  }

  @Test
  void theComplianceGrowsWithTheSquareOfTheDistanceFromThePivot() {
    SideLoad load = load("a.yaml", SETUP, Nose.clean(0.6e6));
    Trait there = MadeBench.heron(SETUP, 18, List.of(load)).stiffnessX();
    Samples at = ((Figure.Drawable) load.setupStiffness()).draws(Draws.DEFAULT);
    Samples tip = there.draws(Draws.DEFAULT, 0);
    Samples ratio = Samples.generate(tip.size(), i -> tip.get(i) / at.get(i));
    // source: recomputed: rigid body on a pivot p = 40 ± 20 mm behind the nut: (p + 10)² / (p +
    // 18)²
    assertThat(ratio.min()).isBetween(30 * 30 / (38.0 * 38), 0.63);
    assertThat(WeightedSamples.of(ratio).quantile(0.5))
        .isCloseTo(50 * 50 / (58.0 * 58), within(0.003));
    assertThat(ratio.max()).isBetween(0.80, 70 * 70 / (78.0 * 78));
    assertThat(codes(there)).containsExactly("stiffness-pivot-assumed");
  }

  @Test
  void fartherOutIsSofterAndLessSure() {
    SideLoad load = load("a.yaml", SETUP, Nose.clean(0.6e6));
    double before = Double.POSITIVE_INFINITY;
    double doubt = 0;
    for (double stickout : new double[] {10, 15, 20, 30, 45}) {
      Figure there = MadeBench.heron(SETUP, stickout, List.of(load)).stiffnessX().figure();
      double pivot =
          there.budget().stream()
                  .filter(share -> share.cause().part().equals("pivot"))
                  .mapToDouble(Figure.Share::u)
                  .sum()
              / there.value();
      assertThat(there.value()).isLessThan(before);
      assertThat(pivot).isGreaterThanOrEqualTo(doubt);
      before = there.value();
      doubt = pivot;
    }
    // source: recomputed: d ln(k)/dp = 2/(p + a) − 2/(p + s), times half of p over √3
    assertThat(doubt).isCloseTo((2 / 50.0 - 2 / 85.0) * 20 / Math.sqrt(3), within(0.03));
  }

  @Test
  void twoSetupsPushedWithOneLeverShareItsDoubt() {
    SideLoad one = load("a.yaml", SETUP, Nose.clean(0.6e6));
    SideLoad other = load("b.yaml", "Heron 1/8 in", Nose.clean(0.4e6));
    List<Reduced> both = List.of(one, other);
    Figure k1 = MadeBench.heron(SETUP, 18, both).stiffnessX().figure();
    Figure k2 = MadeBench.heron("Heron 1/8 in", 18, both).stiffnessX().figure();
    Samples a = ((Figure.Drawable) k1).draws(Draws.DEFAULT);
    Samples b = ((Figure.Drawable) k2).draws(Draws.DEFAULT);
    assertThat(correlation(a, b)).isGreaterThan(0.6);
    Drawn ratio = Drawn.through(v -> v[0] / v[1], Unit.ONE, Draws.DEFAULT, k1, k2);
    double apart = Math.hypot(relative(k1), relative(k2));
    assertThat(relative(ratio)).isLessThan(0.6 * apart);
  }

  @Test
  void noNoseNoCarrying() {
    SideLoad load = load("a.yaml", SETUP, Nose.clean(0.6e6));
    Bench bench =
        MadeBench.bench(
            MadeBench.spindle("Heron", Optional.empty(), Optional.empty(), Optional.empty()));
    Trait there =
        MeasuredCharacter.of(
                bench,
                bench.setup(SETUP).orElseThrow(),
                List.of(load),
                MadeBench.mm(18),
                Draws.DEFAULT)
            .stiffnessX();
    assertThat(there.figure()).isSameAs(load.setupStiffness());
    assertThat(codes(there)).containsExactly("stiffness-pivot-unknown");
  }

  @Test
  void aStiffnessIsTakenOverFromTheSameKindOfHolderOnTheSameSpindleOnly() {
    SideLoad collet = load("a.yaml", SETUP, Nose.clean(0.6e6));
    Trait over = MadeBench.heron("Heron 1/8 in", 10, List.of(collet)).stiffnessX();
    assertThat(over.assumed()).isTrue();
    assertThat(codes(over)).containsExactly("stiffness-taken-over");
    assertThat(relative(over.figure())).isGreaterThan(relative(collet.setupStiffness()));
    assertThat(MadeBench.heron("Heron chuck", 10, List.of(collet)).stiffnessX().known()).isFalse();
    Bench bench = MadeBench.bench(MadeBench.heron(), wren());
    Trait wren =
        MeasuredCharacter.of(
                bench,
                bench.setup("Wren 3 mm").orElseThrow(),
                List.of(collet),
                MadeBench.mm(10),
                Draws.DEFAULT)
            .stiffnessX();
    assertThat(wren.known()).isFalse();
  }

  @Test
  void playAndAFootOffTheTableAreSaid() {
    Nose rattles = Nose.clean(0.6e6).withPlay(40 * UM, 0.5);
    SideLoad load =
        MadeBench.load(
            LoadBench.take(
                Stream.of(3, "play"),
                rattles,
                Shank.clean(3e-3, 210e9, 10e-3),
                LEVER,
                LoadPlan.oneSided(4).andBack().bothWays(),
                dial()),
            "a.yaml",
            "2026-03-01",
            SETUP,
            "carriage");
    assertThat(MadeBench.heron(SETUP, 10, List.of(load)).cautions())
        .extracting(Saying::code)
        .contains("play-not-in-prediction", "stiffness-reference");
    SideLoad firm = load("b.yaml", SETUP, Nose.clean(0.6e6));
    assertThat(MadeBench.heron(SETUP, 10, List.of(firm)).cautions())
        .extracting(Saying::code)
        .doesNotContain("play-not-in-prediction", "stiffness-reference");
  }

  private static Spindle wren() {
    return MadeBench.spindle(
        "Wren", Optional.empty(), Optional.empty(), Optional.of(MadeBench.TO_MOUNT));
  }

  private static SideLoad load(String file, String setup, Nose nose) {
    var taken =
        LoadBench.take(
            Stream.of(2, "carried " + file),
            nose,
            Shank.clean(3e-3, 210e9, 10e-3),
            LEVER,
            LoadPlan.oneSided(4).andBack().bothWays().times(2),
            dial());
    return MadeBench.load(taken, file, "2026-03-01", setup, "table");
  }

  private static Dial dial() {
    return Dial.clean(UM).with(Nuisances.clean().withScatter(0.5 * UM));
  }

  private static List<String> codes(Trait trait) {
    return trait.from().stream().map(Saying::code).toList();
  }

  private static double relative(Figure figure) {
    return figure.estimate().orElseThrow().u() / figure.value();
  }

  private static double correlation(Samples a, Samples b) {
    double sum = 0;
    for (int i = 0; i < a.size(); i++) {
      sum += (a.get(i) - a.mean()) * (b.get(i) - b.mean());
    }
    return sum / (a.size() - 1) / a.standardDeviation() / b.standardDeviation();
  }
}
