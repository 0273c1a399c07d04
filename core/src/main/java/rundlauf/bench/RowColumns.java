package rundlauf.bench;

import java.util.List;

/** The columns that belong to a row itself and not to what was measured. */
public final class RowColumns {
  /** By which the row is known. */
  public static final String ID = "id";

  /** When it was taken. */
  public static final String TAKEN = "taken";

  /** Whether it was struck out. */
  public static final String STRUCK = "struck";

  /** Why it was. */
  public static final String REASON = "reason";

  public static final List<String> ALL = List.of(ID, TAKEN, STRUCK, REASON);

  private RowColumns() {}
}
