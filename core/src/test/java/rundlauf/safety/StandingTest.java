package rundlauf.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.TrialHead;

/** The last inspection decides, and none at all is not a good one. */
class StandingTest {
  private static final Inspection BAD = inspection("2026-03-01", true);
  private static final Inspection GOOD = inspection("2026-03-08", false);

  @Test
  void withoutAnInspectionNobodyKnows() {
    assertThat(Standing.of(List.of())).isEqualTo(Standing.NOT_INSPECTED);
    assertThat(Standing.NOT_INSPECTED.code()).isEqualTo("not-inspected");
  }

  @Test
  void theLatestDateDecidesInWhateverOrderTheyStand() {
    assertThat(Standing.of(List.of(BAD, GOOD))).isEqualTo(Standing.INSPECTED);
    assertThat(Standing.of(List.of(GOOD, BAD))).isEqualTo(Standing.INSPECTED);
    Inspection later = inspection("2026-04-01", true);
    assertThat(Standing.of(List.of(later, GOOD, BAD))).isEqualTo(Standing.HELD);
    assertThat(Standing.last(List.of(later, GOOD, BAD))).isSameAs(later);
  }

  @Test
  void ofEqualDatesTheLaterInTheListDecides() {
    Inspection sameDay = inspection("2026-03-08", true);
    assertThat(Standing.of(List.of(GOOD, sameDay))).isEqualTo(Standing.HELD);
    assertThat(Standing.of(List.of(sameDay, GOOD))).isEqualTo(Standing.INSPECTED);
  }

  private static Inspection inspection(String date, boolean hold) {
    var head =
        new TrialHead(
            "trials/" + date + ".yaml",
            "inspection",
            Optional.empty(),
            Optional.of(date),
            Optional.empty(),
            new LinkedHashMap<>());
    var readings = new InspectionReadings(head, List.of());
    return new Inspection(head, readings, hold, List.of(), List.of(), List.of());
  }
}
