package rundlauf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.text;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** The steps of a runout trial. */
class RunoutPlanTest {
  private static final List<String> EIGHTHS =
      List.of("0", "45", "90", "135", "180", "225", "270", "315", "360");

  private static Followed following(Object... intended) {
    return new Followed(fields("trial", "runout", "intended", fields(intended)));
  }

  private static Entry list(String... texts) {
    return items(Arrays.stream(texts).map(t -> text("", t)).toArray(Entry[]::new));
  }

  @Test
  void goesRoundInEighthsAndClosesAtTheMark() {
    List<Step> steps = new Followed(fields("trial", "runout")).all();
    assertThat(Followed.given(steps, "angle_deg")).isEqualTo(EIGHTHS);
    assertThat(Followed.prompts(steps))
        .startsWith("guide-runout-begin", "guide-runout-turn")
        .endsWith("guide-runout-turn", "guide-runout-back");
    assertThat(steps).allSatisfy(s -> assertThat(s.given()).hasSize(1));
    assertThat(steps.get(0).asked()).extracting(Asked::column).containsExactly("reading_um");
    assertThat(((Scene.Runout) steps.get(3).scene()).angle())
        .isCloseTo(0.75 * Math.PI, within(1e-15));
  }

  @Test
  void goesOnThroughTheTurnsThatWereMeant() {
    List<Step> steps = following("positions", "4", "turns", "2").all();
    assertThat(Followed.given(steps, "angle_deg"))
        .containsExactly("0", "90", "180", "270", "360", "450", "540", "630", "720");
    assertThat(Followed.prompts(steps).subList(3, 9))
        .containsExactly(
            "guide-runout-turn",
            "guide-runout-turn-on",
            "guide-runout-turn-on",
            "guide-runout-turn-on",
            "guide-runout-turn-on",
            "guide-runout-back-last");
    assertThat(steps.get(5).prompt().args()).containsExactly(Arg.number(90), Arg.of(2));
    // 13 times a thirteenth is not a whole turn in floating point
    Saying second = following("positions", "13", "turns", "2").all().get(13).prompt();
    assertThat(second.code()).isEqualTo("guide-runout-turn-on");
    assertThat(second.args()).containsExactly(Arg.number(0), Arg.of(2));
    assertThat(following("positions", "11", "turns", "2").all().get(11).prompt().args())
        .containsExactly(Arg.number(0), Arg.of(2));
    assertThatThrownBy(() -> following("positions", "8", "turns", "51").next())
        .hasMessageStartingWith("intended-many-turns");
  }

  @Test
  void saysHowTheMarksStandFromTheFirstClampingOn() {
    List<Step> steps =
        following("positions", "4", "collet", list("10 deg", "100 deg"), "stations", list("5 mm"))
            .all();
    assertThat(steps.get(0).prompt().code()).isEqualTo("guide-runout-begin-at-turned");
    assertThat(steps.get(0).prompt().args())
        .containsExactly(Arg.of(0.005, Unit.MILLIMETRE), Arg.number(10), Arg.number(0));
    assertThat(steps.get(5).prompt().code()).isEqualTo("guide-runout-clamp-turned");
    assertThat(following("shank", list("0 deg")).next().prompt().code())
        .isEqualTo("guide-runout-begin-turned");
  }

  @Test
  void goesStationByStationWithinAClamping() {
    List<Step> steps =
        following(
                "positions",
                "4",
                "stations",
                list("5 mm", "0.02 m"),
                "clampings",
                "2",
                "reading",
                "div")
            .all();
    assertThat(steps).hasSize(2 * 2 * 5);
    assertThat(Followed.given(steps.subList(0, 5), "angle_deg"))
        .containsExactly("0", "90", "180", "270", "360");
    assertThat(Followed.given(steps.subList(0, 11), "station_mm"))
        .containsExactly("5", "5", "5", "5", "5", "20", "20", "20", "20", "20", "5");
    assertThat(Followed.given(steps, "clamping").subList(8, 12))
        .containsExactly("1", "1", "2", "2");
    assertThat(steps.get(0).prompt().code()).isEqualTo("guide-runout-begin-at");
    assertThat(steps.get(5).prompt().code()).isEqualTo("guide-runout-move");
    assertThat(steps.get(10).prompt().code()).isEqualTo("guide-runout-clamp");
    assertThat(steps.get(15).prompt().code()).isEqualTo("guide-runout-move");
    assertThat(steps.get(0).asked()).extracting(Asked::column).containsExactly("reading_div");
  }

  @Test
  void turnsThePartsFromClampingToClamping() {
    List<Step> steps =
        following("positions", "4", "collet", list("0 deg", "90 deg", "180 deg")).all();
    assertThat(steps).hasSize(15);
    assertThat(Followed.given(steps, "collet_deg"))
        .startsWith("0", "0")
        .endsWith("180", "180")
        .containsSubsequence("0", "90", "180");
    assertThat(steps.get(5).prompt().code()).isEqualTo("guide-runout-clamp-turned");
    assertThat(steps.get(5).prompt().args()).hasSize(3);
    assertThat(Followed.given(steps, "shank_deg")).containsOnly("");
  }

  @Test
  void aRowOffThePlanAnswersNoStep() {
    Followed trial = new Followed(fields("trial", "runout")).take(2);
    Guidance before = trial.guidance();
    trial.row(Map.of("angle_deg", "60", "reading_um", "3"));
    assertThat(trial.guidance().step()).isEqualTo(before.step());
    assertThat(trial.guidance().done()).isEqualTo(2);
    assertThat(trial.guidance().intended()).isEqualTo(9);
  }

  @Test
  void anAngleTypedOtherwiseIsTheSameAngle() {
    Followed trial = new Followed(fields("trial", "runout")).take(1);
    trial.row(Map.of("angle_deg", "45,0", "reading_um", "3"));
    assertThat(Followed.given(trial.next(), "angle_deg")).isEqualTo("90");
  }

  @Test
  void whatWasStruckIsAskedAgainWhereverItStood() {
    Followed trial = new Followed(fields("trial", "runout")).take(5).strike(2);
    assertThat(Followed.given(trial.next(), "angle_deg")).isEqualTo("90");
    assertThat(Followed.given(trial.take(1).next(), "angle_deg")).isEqualTo("225");
  }

  @Test
  void goesOnInTheColumnsThatTheTableHas() {
    Followed trial =
        following("stations", list("5 mm"))
            .row(Map.of("station_um", "5000", "angle_deg", "0", "reading_mm", "0.01"));
    assertThat(trial.guidance().done()).isEqualTo(1);
    assertThat(Followed.given(trial.next(), "station_um")).isEqualTo("5000");
    assertThat(trial.next().asked()).extracting(Asked::column).containsExactly("reading_mm");
  }

  @Test
  void aReadingMoreGoesOnFromTheLastRow() {
    Followed trial = following("stations", list("5 mm", "20 mm"), "positions", "4");
    assertThat(trial.guidance().more()).isEqualTo(trial.next());
    Step more = trial.take(7).guidance().more();
    assertThat(Followed.given(more, "station_mm")).isEqualTo("20");
    assertThat(Followed.given(more, "angle_deg")).isEqualTo("180");
  }

  @Test
  void aTrialThatFollowedNoPlanGoesOnFreely() {
    Followed trial = new Followed(fields("trial", "runout"));
    for (String angle : List.of("0", "72", "144", "216")) {
      trial.row(Map.of("angle_deg", angle, "reading_um", "1"));
    }
    assertThat(trial.guidance().step()).isEmpty();
    assertThat(trial.guidance().done()).isEqualTo(4);
    assertThat(trial.guidance().intended()).isEqualTo(4);
    assertThat(Followed.given(trial.guidance().more(), "angle_deg")).isEqualTo("261");
  }
}
