package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import rundlauf.quantity.Refused;

/** A code lets in one device, for five minutes, and stands five tries. */
class DoorTest {
  private Instant now = Instant.parse("2026-11-25T09:00:00Z");
  private final Door door = new Door(() -> now);
  private final Sessions sessions = new Sessions(() -> now);

  private void letIn(String code) {
    door.letIn(code, sessions.open(true), "a browser");
  }

  private String refused(String code) {
    return catchThrowableOfType(Refused.class, () -> letIn(code)).saying().code();
  }

  private String other(String code) {
    char first = code.charAt(0) == 'A' ? 'C' : 'A';
    return first + code.substring(1);
  }

  @Test
  void codesAreEightLettersNoneOfWhichLooksLikeAnother() {
    for (int i = 0; i < 200; i++) {
      assertThat(door.open().text())
          .hasSize(8)
          .doesNotContainPattern("[^34679ACDEFGHJKMNPQRTVWXY]");
    }
    assertThat(door.open().text()).isNotEqualTo(door.open().text());
  }

  @Test
  void oneDeviceAlone() {
    String code = door.open().text();
    letIn(" " + code.substring(0, 4).toLowerCase(Locale.ROOT) + " " + code.substring(4));
    assertThat(door.devices()).hasSize(1);
    assertThat(refused(code)).isEqualTo("code-none");
  }

  @Test
  void fiveWrongTriesEndIt() {
    String code = door.open().text();
    for (int i = 0; i < 4; i++) {
      assertThat(refused(other(code))).isEqualTo("code-wrong");
    }
    letIn(code);
    String next = door.open().text();
    for (int i = 0; i < 5; i++) {
      assertThat(refused(other(next))).isEqualTo("code-wrong");
    }
    assertThat(refused(next)).isEqualTo("code-none");
  }

  @Test
  void fiveMinutesEndIt() {
    String code = door.open().text();
    now = now.plus(Duration.ofMinutes(5)).minusMillis(1);
    assertThat(door.code()).isPresent();
    now = now.plusMillis(1);
    assertThat(door.code()).isEmpty();
    assertThat(refused(code)).isEqualTo("code-none");
  }

  @Test
  void aNewCodeEndsTheOneBefore() {
    String code = door.open().text();
    door.open();
    assertThat(refused(code)).isEqualTo("code-wrong");
  }

  @Test
  void shutOutIsOnlyTheOneThatIsMeant() {
    Sessions.Session first = sessions.open(true);
    Sessions.Session second = sessions.open(true);
    door.letIn(door.open().text(), first, "one");
    door.letIn(door.open().text(), second, "two");
    door.shutOut(1);
    assertThat(door.isIn(first)).isFalse();
    assertThat(door.isIn(second)).isTrue();
    assertThat(door.isIn(sessions.open(true))).isFalse();
    now = now.plus(Sessions.LASTS).plusSeconds(1);
    assertThat(door.devices()).isEmpty();
  }
}
