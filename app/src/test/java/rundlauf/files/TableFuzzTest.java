package rundlauf.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import com.code_intelligence.jazzer.mutation.annotation.NotNull;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.bench.Table;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Format;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.QuantityText;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** Any bytes as a table, any text as a quantity: refused by a sentence, or whole. */
class TableFuzzTest {
  @MethodSource("rundlauf.files.Seeds#tables")
  @FuzzTest(maxDuration = "2m")
  void aTable(byte[] bytes) throws IOException {
    try {
      ByteLines lines = new ByteLines(new ByteArrayInputStream(bytes), "a.csv");
      Table table = CsvTable.read(lines, "a.csv", Place.NOWHERE);
      assertThat(table.rows())
          .allSatisfy(r -> assertThat(r.cells()).hasSameSizeAs(table.columns()));
      assertThat(table.columns()).noneMatch(c -> c.text().isEmpty());
    } catch (Refused refused) {
      assertThat(Sentences.refusal(refused).line()).isNotBlank();
    }
  }

  @MethodSource("rundlauf.files.Seeds#quantities")
  @FuzzTest(maxDuration = "2m")
  void aQuantity(@NotNull String typed) {
    for (Dimension dimension : Dimension.values()) {
      try {
        Quantity q = QuantityText.read(typed, dimension, false, Place.NOWHERE);
        assertThat(q.si()).isFinite();
        assertThat(q.halfWidth()).isFinite().isNotNegative();
        Quantity again = QuantityText.read(Format.typed(q), dimension, true, Place.NOWHERE);
        assertThat(Math.abs(again.si() - q.si())).isLessThanOrEqualTo(Math.abs(q.si()) * 1e-15);
      } catch (Refused refused) {
        assertThat(Sentences.refusal(refused).line()).isNotBlank();
      }
    }
  }
}
