package rundlauf.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.quantity.Saying;

/** What a trial does not say of its conditions. */
class UnsaidTest {
  @ParameterizedTest
  @CsvSource({
    "runout, cleaned nut pin warm-up turned-by",
    "side-load, reference cleaned nut warm-up rotor",
    "axial, reference cleaned nut warm-up rotor",
    "growth, reference warm-up temperature",
    "speed, warm-up",
    "inspection, ''",
  })
  void whatSpoilsAComparisonMostComesFirst(String kind, String unsaid) {
    Guidance guidance = new Followed(fields("trial", kind)).guidance();
    assertThat(String.join(" ", guidance.ask().stream().map(Saying::about).toList()))
        .isEqualTo(unsaid);
  }

  @Test
  void whatIsSaidIsNotAskedFor() {
    Guidance guidance =
        new Followed(
                fields(
                    "trial",
                    "side-load",
                    "reference",
                    "table",
                    "conditions",
                    fields("nut", "8 N m", "rotor", "locked")))
            .guidance();
    assertThat(guidance.ask()).extracting(Saying::about).isEqualTo(List.of("cleaned", "warm-up"));
  }
}
