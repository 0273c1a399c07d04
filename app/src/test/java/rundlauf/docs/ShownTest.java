package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The comparison of shown with printed output is strict where nothing was left out. */
class ShownTest {
  @ParameterizedTest
  @CsvSource({
    "a|b, a|b, true",
    "a|b, a|c, false",
    "a|b, a|b|c, false",
    "a|…, a|b|c, true",
    "…|c, a|b|c, true",
    "a|…|c, a|c, true",
    "a|…|c, a|b, false",
    "TIR … µm, TIR 12.3 µm, true",
    "TIR … µm, TIR 12.3 mm, false",
    "a.c, abc, false"
  })
  void compares(String shown, String printed, boolean fits) {
    assertThat(Shown.fits(shown.replace('|', '\n'), printed.replace('|', '\n'))).isEqualTo(fits);
  }
}
