package rundlauf.guide;

import java.util.List;

/** Columns that belong to a row itself and not to what was measured. */
final class Rows {
  static final List<String> OWN = List.of("id", "taken", "struck", "reason");

  private Rows() {}
}
