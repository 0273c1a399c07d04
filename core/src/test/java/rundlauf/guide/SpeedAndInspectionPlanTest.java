package rundlauf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.text;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Entry;
import rundlauf.quantity.Place;
import rundlauf.safety.SafetyItem;

/** The steps of trials that turn nothing and push nothing. */
class SpeedAndInspectionPlanTest {
  private static Followed speed(String... settings) {
    Entry list = items(Arrays.stream(settings).map(t -> text("", t)).toArray(Entry[]::new));
    return new Followed(fields("trial", "speed", "intended", fields("settings", list)));
  }

  @ParameterizedTest
  @CsvSource({
    "20 %, 40 %, setting_%, 20",
    "5V, 7.5 V, setting_V, 5",
    "3, 4, setting, 3",
  })
  void goesFromSettingToSetting(String first, String second, String column, String text) {
    Followed trial = speed(first, second);
    assertThat(Followed.given(trial.next(), column)).isEqualTo(text);
    assertThat(trial.next().asked())
        .extracting(Asked::column)
        .containsExactly("speed_rpm", "power_W");
    assertThat(Followed.prompts(trial.all())).containsExactly("guide-speed-set", "guide-speed-set");
    assertThat(Followed.prompts(List.of(trial.guidance().more())))
        .containsExactly("guide-speed-any");
  }

  @Test
  void asksForSixSettingsWhereNoneWereMeant() {
    Followed trial = new Followed(fields("trial", "speed"));
    assertThat(trial.next().asked()).extracting(Asked::column).startsWith("setting");
    assertThat(trial.all()).hasSize(6);
  }

  @Test
  void settingsAnsweredInAnyOrderAreAnswered() {
    Followed trial = speed("20 %", "40 %", "60 %");
    trial.row(Map.of("setting_%", "60", "speed_rpm", "9000"));
    trial.row(Map.of("setting_%", "33", "speed_rpm", "5000"));
    assertThat(trial.guidance().done()).isEqualTo(1);
    assertThat(Followed.given(trial.all(), "setting_%")).containsExactly("20", "40");
  }

  @Test
  void looksAtEveryItemOfTheSafetyListInItsOrder() {
    List<Step> steps = new Followed(fields("trial", "inspection")).all();
    assertThat(Followed.given(steps, "item"))
        .isEqualTo(SafetyItem.of(SafetyItem.Fed.UNKNOWN).stream().map(SafetyItem::id).toList());
    assertThat(steps.get(0).asked().get(0).choices()).containsExactly("good", "fault", "unchecked");
  }

  @Test
  void anItemIsAskedAgainOnceItsAnswerIsStruck() {
    Followed trial = new Followed(fields("trial", "inspection")).take(3).strike(0);
    assertThat(Followed.given(trial.next(), "item"))
        .isEqualTo(SafetyItem.of(SafetyItem.Fed.UNKNOWN).get(0).id());
    assertThat(trial.guidance().more().asked()).extracting(Asked::column).startsWith("item");
  }

  @Test
  void itemsOfTheDocumentAreAnswered() {
    Entry.Fields guard = fields("item", "guard", "state", "good");
    var document =
        fields("trial", "inspection").with("items", new Entry.Items(List.of(guard), Place.NOWHERE));
    Followed trial = new Followed(document);
    assertThat(trial.guidance().done()).isEqualTo(1);
    assertThat(Followed.given(trial.guidance().ahead(), "item"))
        .isNotEmpty()
        .doesNotContain("guard");
  }
}
