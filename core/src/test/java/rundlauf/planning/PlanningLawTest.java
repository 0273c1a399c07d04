package rundlauf.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.cutting.prediction.CutAsked;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.maths.Work;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;
import rundlauf.safety.Standing;

class PlanningLawTest {
  private static final Standing GOOD = Standing.INSPECTED;

  @Test
  void theCutChosenKeepsEveryLimitAndAHeavierOneDoesNot() {
    JobPlan plan = new MadeJob().setup("stiff", 5e6, 3e-6, GOOD).plan();
    SetupPlan one = plan.setups().get(0);
    Prediction best = one.best().orElseThrow();
    assertThat(one.feasible()).isTrue();
    assertThat(best.probability()).isGreaterThanOrEqualTo(Limit.ASKED);
    assertThat(best.covers()).contains("wall-error", "stress", "power", "chip-thickest");
    assertThat(one.boundBy()).isPresent();
    CutAsked cut = best.task().cut();
    int deep = one.passes().orElseThrow().deep();
    assertThat(cut.axial().si() * deep).isCloseTo(1.2e-3, within(1e-9));
    double feed = best.figures().at("kinematics.feed").value();
    assertThat(one.time().orElseThrow()).isCloseTo(deep * 60e-3 / feed, within(1e-9));
  }

  @Test
  void aStifferSetupIsNeverSlower() {
    double before = Double.POSITIVE_INFINITY;
    for (double stiffness : new double[] {0.3e6, 0.6e6, 1.2e6, 2.5e6, 10e6}) {
      SetupPlan one = new MadeJob().setup("one", stiffness, 3e-6, GOOD).plan().setups().get(0);
      double time = one.feasible() ? one.time().orElseThrow() : Double.POSITIVE_INFINITY;
      assertThat(time).as("at " + stiffness).isLessThanOrEqualTo(before);
      before = time;
    }
    assertThat(before).isFinite();
  }

  @Test
  void moreToleranceNeverMakesAJobSlowerOrImpossible() {
    double before = Double.POSITIVE_INFINITY;
    boolean once = false;
    for (String tolerance : List.of("0.01 mm", "0.02 mm", "0.04 mm", "0.1 mm", "0.4 mm")) {
      MadeJob made = new MadeJob().setup("one", 1.2e6, 5e-6, GOOD).with("tolerance", tolerance);
      SetupPlan one = made.plan().setups().get(0);
      once |= one.feasible();
      assertThat(one.feasible()).as(tolerance).isEqualTo(once);
      double time = one.feasible() ? one.time().orElseThrow() : Double.POSITIVE_INFINITY;
      assertThat(time).as(tolerance).isLessThanOrEqualTo(before);
      before = time;
    }
    assertThat(once).isTrue();
  }

  @Test
  void heldOnesStandLastAndOnesNotInspectedAreNeverRecommended() {
    JobPlan plan =
        new MadeJob()
            .setup("held", 20e6, 1e-6, Standing.HELD)
            .setup("unseen", 10e6, 1e-6, Standing.NOT_INSPECTED)
            .setup("soft", 1.5e6, 5e-6, GOOD)
            .plan();
    assertThat(plan.setups())
        .extracting(SetupPlan::setup)
        .containsExactly("soft", "unseen", "held");
    assertThat(plan.setups())
        .extracting(SetupPlan::recommended)
        .containsExactly(true, false, false);
    assertThat(plan.setups().get(2).because()).extracting("code").contains("made-fault");
    assertThat(plan.cautions()).extracting("code").contains("chatter-not-examined");
    assertThat(plan.possible()).isTrue();

    JobPlan none =
        new MadeJob()
            .setup("held", 20e6, 1e-6, Standing.HELD)
            .setup("unseen", 10e6, 1e-6, Standing.NOT_INSPECTED)
            .plan();
    assertThat(none.possible()).isFalse();
    assertThat(none.advice()).extracting("code").contains("inspect-to-recommend");
  }

  @Test
  void whereNoneWillDoTheNearestMissIsToldAndWhatWouldHelp() {
    JobPlan plan =
        new MadeJob().setup("soft", 0.9e6, 12e-6, GOOD).with("tolerance", "0.02 mm").plan();
    SetupPlan one = plan.setups().get(0);
    assertThat(one.feasible()).isFalse();
    assertThat(one.boundBy().orElseThrow().code()).isEqualTo("wall-error");
    assertThat(one.boundBy().orElseThrow().holds()).isFalse();
    assertThat(plan.advice()).extracting("code").contains("nearest-miss", "help-wall-cut-too-far");
  }

  @Test
  void twoTraitsThatShareACauseChangeTheOddsOfAPlan() {
    Cause common = Cause.normal("dial", "made");
    double shared = probability(common, common);
    double apart = probability(common, Cause.normal("lever", "made"));
    // soft in the very draws in which it runs out
    assertThat(apart).isGreaterThan(shared + 0.04);
  }

  /** Odds of the nearest miss of a job that neither can do. */
  private static double probability(Cause ofRunout, Cause ofStiffness) {
    Measured stiffness = MadeJob.doubtful(0.5e6, -0.125e6, Unit.NEWTON_PER_MICROMETRE, ofStiffness);
    Measured eccentricity = MadeJob.doubtful(12e-6, 4e-6, Unit.MICROMETRE, ofRunout);
    return new MadeJob()
        .setup("one", stiffness, eccentricity, GOOD)
        .with("tolerance", "0.02 mm")
        .plan()
        .setups()
        .get(0)
        .best()
        .orElseThrow()
        .probability();
  }

  @Test
  void theSameSeedGivesTheSamePlan() {
    JobPlan first = new MadeJob().setup("one", 1.2e6, 5e-6, GOOD).plan();
    JobPlan second = new MadeJob().setup("one", 1.2e6, 5e-6, GOOD).plan();
    Prediction a = first.setups().get(0).best().orElseThrow();
    Prediction b = second.setups().get(0).best().orElseThrow();
    assertThat(a.task().cut()).isEqualTo(b.task().cut());
    assertThat(a.figures().at("force.peak.lateral").value())
        .isEqualTo(b.figures().at("force.peak.lateral").value());
  }

  @Test
  void itDoesNotMatterInWhichOrderTheSetupsArePlanned() {
    MadeJob made = new MadeJob().setup("one", 1.2e6, 5e-6, GOOD).setup("two", 0.6e6, 9e-6, GOOD);
    JobPlan inOrder = made.plan();
    JobPlan lastFirst = made.plan(new LastFirst());
    assertThat(lastFirst.setups()).extracting(PlanningLawTest::shown).isEqualTo(shown(inOrder));
  }

  private static List<String> shown(JobPlan plan) {
    return plan.setups().stream().map(PlanningLawTest::shown).toList();
  }

  private static String shown(SetupPlan plan) {
    Prediction best = plan.best().orElseThrow();
    return plan.setup()
        + best.task().cut()
        + best.probability()
        + best.figures().at("force.peak.lateral").value();
  }

  /** Does the last part first, as it may happen where many work. */
  private static final class LastFirst implements Work {
    @Override
    public <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> f) {
      LinkedList<R> results = new LinkedList<>();
      for (int i = items.size() - 1; i >= 0; i--) {
        results.addFirst(f.apply(items.get(i)));
      }
      return results;
    }

    @Override
    public void step(int done, int of) {
      // nobody is listening
    }

    @Override
    public void check() {
      // never stopped
    }
  }

  @Test
  void drillingIsNotGuessed() {
    JobPlan plan =
        new MadeJob()
            .setup("one", 1.2e6, 5e-6, GOOD)
            .with("feature", "drill")
            .with("cutter", "1.5 mm drill")
            .plan();
    assertThat(plan.setups().get(0).best()).isEmpty();
    assertThat(plan.possible()).isFalse();
    assertThat(plan.cautions())
        .extracting("code")
        .contains("drilling-not-predicted", "chatter-not-examined");
  }

  @Test
  void whatTheJobAsksAndNobodyCanJudgeIsNotFeasible() {
    MadeJob made =
        new MadeJob()
            .setup("one", 5e6, 3e-6, GOOD)
            .with("material", "aluminium 6061-T6")
            .holding("lift", "5 N");
    SetupPlan one = made.plan().setups().get(0);
    assertThat(one.feasible()).isFalse();
    assertThat(one.because())
        .extracting("code")
        .contains("asked-limit-not-judged", "axial-coefficients-unknown");
    assertThat(made.holding("in-plane", "500 N").plan().setups().get(0).feasible()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "material, '', job-without-material",
    "material, unobtainium, material-unknown",
    "feature, '', job-without-feature",
    "depth, '', job-without-depth",
    "depth, 12 mm, job-deeper-than-flutes",
    "width, 2 mm, job-narrower-than-cutter",
    "cutter, 4 mm, name-not-defined",
    "cutter, 1.5 mm drill, cutter-kind-not-for-feature",
    "tolerance, 0 mm, value-not-positive",
    "feature, engrave, engrave-without-v-tool"
  })
  void aJobThatCannotBeIsRefused(String field, String value, String code) {
    MadeJob made = new MadeJob().setup("one", 5e6, 3e-6, GOOD).with(field, value);
    assertThatThrownBy(made::plan)
        .isInstanceOfSatisfying(
            Refused.class, refused -> assertThat(refused.saying().code()).isEqualTo(code));
  }
}
