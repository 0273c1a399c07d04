package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Which refusals further readings may mend. */
class UnfinishedTest {
  private static final Object[] RUNOUT = {
    "trial", "runout", "indicator", fields("division", "0.01 mm")
  };

  private static Refused refused(String... table) {
    return catchThrowableOfType(
        Refused.class, () -> RunoutReader.read(trial(fields(RUNOUT), table), Optional.empty()));
  }

  /** Each of these becomes whole as the turn is gone round. */
  @Test
  void aTurnThatWasBegunIsUnfinished() {
    String header = "angle_deg, reading_um";
    assertThat(Unfinished.is(refused())).isTrue();
    assertThat(Unfinished.is(refused(header))).isTrue();
    assertThat(Unfinished.is(refused(header, "0, 0", "90, 10"))).isTrue();
    assertThat(Unfinished.is(refused(header, "0, 0", "0, 0", "90, 10", "90, 10"))).isTrue();
    assertThat(Unfinished.is(refused(header, "0, 0", "30, 0", "60, 10", "90, 10"))).isTrue();
    assertThat(refused(header, "0, 0", "90, 10", "180, 20", "270, 10")).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "all-rows-struck, true",
    "growth-few-times, true",
    "no-difference-of-load, true",
    "no-items, true",
    "reading-off-grid, false",
    "column-unknown, false",
    "growth-time-falls, false",
  })
  void isTold(String code, boolean unfinished) {
    assertThat(Unfinished.is(Refused.at(Place.NOWHERE, code))).isEqualTo(unfinished);
  }
}
