package rundlauf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The steps of a growth trial. */
class GrowthPlanTest {
  private static Followed following(Object... intended) {
    return new Followed(fields("trial", "growth", "intended", fields(intended)));
  }

  @Test
  void readsEveryFewMinutesFromColdToTheEnd() {
    List<Step> steps = following("for", "10 min", "every", "2.5 min").all();
    assertThat(Followed.given(steps, "time_min")).containsExactly("0", "2.5", "5", "7.5", "10");
    assertThat(Followed.prompts(steps)).startsWith("guide-growth-begin", "guide-growth-at");
    assertThat(steps.get(0).asked()).extracting(Asked::needed).containsExactly(true, false);
    assertThat(new Followed(fields("trial", "growth")).guidance().intended()).isEqualTo(21);
  }

  @Test
  void takesFourTimesHoweverShortItWasMeant() {
    assertThat(Followed.given(following("for", "1 min", "every", "30 min").all(), "time_min"))
        .containsExactly("0", "30", "60", "90");
  }

  @Test
  void endsHoweverFinelyItWasMeant() {
    assertThat(following("for", "900 h", "every", "1 s").guidance().intended()).isEqualTo(400);
  }

  @Test
  void askedAgainIsOnlyWhatHasNotGoneBy() {
    Followed trial = following("for", "10 min", "every", "2 min").take(3);
    trial.strike(2);
    assertThat(Followed.given(trial.next(), "time_min")).isEqualTo("4");
    trial.take(2).strike(1);
    assertThat(Followed.given(trial.next(), "time_min")).isEqualTo("8");
    assertThat(Followed.given(trial.all(), "time_min")).containsExactly("8", "10");
    assertThat(Followed.given(trial.guidance().more(), "time_min")).isEqualTo("12");
  }

  @Test
  void goesOnInTheColumnsThatTheTableHas() {
    Followed trial =
        following("for", "10 min", "every", "2 min")
            .row(Map.of("time_s", "0", "reading_um", "0"))
            .row(Map.of("time_s", "130", "reading_um", "1"));
    assertThat(Followed.given(trial.next(), "time_s")).isEqualTo("240");
    assertThat(trial.guidance().done()).isEqualTo(1);
  }
}
