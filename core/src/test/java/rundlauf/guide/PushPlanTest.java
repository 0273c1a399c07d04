package rundlauf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.text;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Entry;

/** The steps of trials that push. */
class PushPlanTest {
  private static Followed following(String kind, Object... intended) {
    return new Followed(fields("trial", kind, "reference", "base", "intended", fields(intended)));
  }

  private static Entry list(String... texts) {
    return items(Arrays.stream(texts).map(t -> text("", t)).toArray(Entry[]::new));
  }

  @Test
  void hangsOnAndTakesOffWayByWay() {
    List<Step> steps = following("side-load").all();
    assertThat(Followed.given(steps, "count"))
        .containsExactly("0", "1", "2", "3", "2", "1", "0", "0", "1", "2", "3", "2", "1", "0");
    assertThat(Followed.given(steps, "branch").subList(0, 7))
        .containsExactly("up", "up", "up", "up", "down", "down", "down");
    assertThat(Followed.given(steps, "direction_deg"))
        .startsWith("0")
        .containsSubsequence("0", "180")
        .endsWith("180");
    assertThat(Followed.prompts(steps).subList(0, 7))
        .containsExactly(
            "guide-push-rest",
            "guide-push-on",
            "guide-push-on",
            "guide-push-on",
            "guide-push-off",
            "guide-push-off",
            "guide-push-off-all");
    assertThat(((Scene.SideLoad) steps.get(0).scene()).reference()).isEqualTo("base");
  }

  @Test
  void pushesAndPullsAlongTheAxis() {
    List<Step> steps = following("axial", "counts", list("0", "2")).all();
    assertThat(Followed.given(steps, "count")).containsExactly("0", "2", "0", "0", "2", "0");
    assertThat(Followed.given(steps, "direction"))
        .containsExactly("push", "push", "push", "pull", "pull", "pull");
    assertThat(steps.get(0).prompt().code()).isEqualTo("guide-axial-rest-push");
    assertThat(steps.get(3).prompt().code()).isEqualTo("guide-axial-rest-pull");
    assertThat(steps).extracting(s -> Followed.given(s, "place")).containsOnly("nut");
  }

  @Test
  void beginsWithoutLoadAndRisesHoweverTheLoadsWereWritten() {
    List<Step> steps =
        following("side-load", "loads", list("20 N", "7.5 N"), "directions", list("90 deg")).all();
    assertThat(Followed.given(steps, "load_N")).containsExactly("0", "7.5", "20", "7.5", "0");
    assertThat(Followed.prompts(steps))
        .containsExactly(
            "guide-push-rest",
            "guide-push-with",
            "guide-push-with",
            "guide-push-back-to",
            "guide-push-off-all");
    assertThat(Followed.given(following("side-load", "counts", list("2", "1")).all(), "count"))
        .startsWith("0", "1", "2", "1", "0");
  }

  @Test
  void takesAllOfItAsOftenAsWasMeant() {
    Followed trial =
        following(
            "side-load", "counts", list("0", "1"), "directions", list("0 deg"), "repeats", "3");
    assertThat(trial.guidance().intended()).isEqualTo(9);
    assertThat(trial.all()).hasSize(9);
    assertThat(trial.guidance().done()).isEqualTo(9);
  }

  @Test
  void aRowOffThePlanAndAStruckOneAnswerNoStep() {
    Followed trial = following("side-load").take(4);
    trial.row(
        Map.of("count", "5", "direction_deg", "0", "branch", "up", "reading_um", "9")); // off plan
    assertThat(trial.next().prompt().code()).isEqualTo("guide-push-off");
    trial.strike(1);
    assertThat(Followed.given(trial.next(), "count")).isEqualTo("1");
    assertThat(Followed.given(trial.next(), "branch")).isEqualTo("up");
  }

  @Test
  void aReadingMoreRepeatsTheLastRow() {
    Followed trial = following("axial");
    assertThat(trial.guidance().more().given()).isEqualTo(trial.next().given());
    Step more = trial.take(3).guidance().more();
    assertThat(Followed.given(more, "count")).isEqualTo("2");
    assertThat(Followed.given(more, "reading_um")).isEmpty();
  }
}
