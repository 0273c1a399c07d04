package rundlauf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.text;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Unit;

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
  void goesFromBodyToBodyAndThenToTheNextDistance() {
    Object[] meant = {
      "counts", list("0", "1"),
      "directions", list("0 deg"),
      "contacts", list("10 mm", "25 mm"),
      "places", list("shank 12 mm", "Nut  -1 mm")
    };
    List<Step> steps = following("side-load", meant).all();
    assertThat(Followed.given(steps, "contact_mm"))
        .containsExactly("10", "10", "10", "10", "10", "10", "25", "25", "25", "25", "25", "25");
    assertThat(Followed.given(steps, "at_mm").subList(0, 6))
        .containsExactly("12", "12", "12", "-1", "-1", "-1");
    assertThat(Followed.given(steps, "place").subList(2, 5)).containsExactly("shank", "nut", "nut");
    assertThat(Followed.prompts(steps).subList(2, 5))
        .containsExactly("guide-push-off-all", "guide-push-rest-dial-load", "guide-push-on");
    assertThat(steps.get(3).prompt().args())
        .containsExactly(
            Arg.number(0),
            Arg.of("nut"),
            Arg.of(0.001, Unit.MILLIMETRE),
            Arg.term("behind"),
            Arg.of(0.01, Unit.MILLIMETRE));
    assertThat(((Scene.SideLoad) steps.get(3).scene()).place()).isEqualTo("nut");
    Step more = following("side-load", meant).take(4).guidance().more();
    assertThat(Followed.given(more, "place")).isEqualTo("nut");
    assertThat(((Scene.SideLoad) more.scene()).place()).isEqualTo("nut");
  }

  @Test
  void saysWhereToOnlyWhenSomethingIsMoved() {
    List<Step> steps =
        following("side-load", "counts", list("1"), "places", list("nut -1 mm"), "repeats", "2")
            .all();
    assertThat(Followed.prompts(steps))
        .filteredOn(code -> code.contains("rest"))
        .containsExactly(
            "guide-push-rest-dial", "guide-push-rest", "guide-push-rest", "guide-push-rest");
    assertThat(Followed.prompts(following("side-load", "contacts", list("5 mm")).all()))
        .startsWith("guide-push-rest-load");
    assertThat(Followed.prompts(following("axial", "contacts", list("5 mm")).all()))
        .startsWith("guide-axial-rest-push");
  }

  @Test
  void aBodyThatCannotBeTouchedThereIsRefused() {
    Map<String, String> refused =
        Map.of(
            "nut 1 mm", "nut-ahead-of-face",
            "shank -1 mm", "shank-behind-face",
            "nut", "intended-place",
            "chuck 3 mm", "intended-place",
            "nut three", "number-not-read",
            "nut 3 N", "unit-of-another-kind");
    refused.forEach(
        (text, code) ->
            assertThatThrownBy(() -> following("side-load", "places", list(text)).all())
                .as(text)
                .hasMessageStartingWith(code));
    assertThatThrownBy(
            () -> following("side-load", "places", list("housing -9 mm", "nut -9 mm")).all())
        .hasMessageStartingWith("two-bodies-at");
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
