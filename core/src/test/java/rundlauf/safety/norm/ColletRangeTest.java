package rundlauf.safety.norm;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.safety.norm.MadeCollet.mm;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Holder;
import rundlauf.bench.Span;
import rundlauf.quantity.Saying;

/** Bores and ranges that a size of collet cannot have. */
class ColletRangeTest {
  // source: a maker's table per DIN 6499: ER11 0.5-7.0, ER16 0.5-10.0, ER20 0.5-13.0,
  // ER25 0.5-16.0, ER32 1.0-20.0 mm
  @ParameterizedTest
  @CsvSource({
    "ER11, 7, ''",
    "ER11, 7.01, collet-bore-beyond-size",
    "er 11, 8, collet-bore-beyond-size",
    "ER11, 0.5, ''",
    "ER11, 0.4, collet-bore-beyond-size",
    "ER16, 10, ''",
    "ER16, 10.1, collet-bore-beyond-size",
    "ER20, 13, ''",
    "ER20, 13.1, collet-bore-beyond-size",
    "ER25, 16, ''",
    "ER25, 16.1, collet-bore-beyond-size",
    "ER32, 20, ''",
    "ER32, 20.1, collet-bore-beyond-size",
    "ER32, 0.9, collet-bore-beyond-size",
    "ER40, 40, ''"
  })
  void aBoreIsOneThatTheSizeHas(String system, double bore, String code) {
    expect(MadeCollet.collet("collet", system, bore, null), code);
    expect(MadeCollet.collet("chuck", system, bore, null), "");
  }

  // source: an online encyclopedia (weak): one ER11 collet closes over 0.5 mm in all
  // source: a tool supplier's help page: typically 1 mm
  @ParameterizedTest
  @CsvSource({
    "ER11, 2.5, ''",
    "ER11, 2.4, collet-range-too-wide",
    "ER16, 2, ''",
    "ER16, 1.9, collet-range-too-wide"
  })
  void aRangeIsNoWiderThanOneColletCloses(String system, double min, String code) {
    Holder plain = MadeCollet.collet("collet", system, 3.0, null);
    expect(
        new Holder(
            plain.name(),
            plain.kind(),
            plain.system(),
            plain.bore(),
            Optional.of(new Span(mm(min), mm(3))),
            plain.material(),
            plain.grade(),
            plain.maxSpeed(),
            plain.notes()),
        code);
  }

  private static void expect(Holder holder, String code) {
    assertThat(ColletRange.cautions(holder).stream().map(Saying::code))
        .containsExactly(code.isEmpty() ? new String[0] : new String[] {code});
  }
}
