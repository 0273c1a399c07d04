package rundlauf.guide;

import java.util.List;
import rundlauf.readings.Intended;

/** The cell that a dial's reading is typed into. */
final class Readings {
  private Readings() {}

  /** The column that the table has already; else in the unit that was meant, else in µm. */
  static Asked asked(Intended intended, TypedRows typed) {
    String column = typed.column("reading").orElse("reading_" + intended.reading().orElse("um"));
    return new Asked(column, Asked.Kind.NUMBER, List.of(), true);
  }
}
