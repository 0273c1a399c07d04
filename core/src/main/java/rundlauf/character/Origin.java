package rundlauf.character;

import java.util.Locale;

/** Where a trait comes from. */
public enum Origin {
  /** From the readings of trials. */
  MEASURED,
  /** Typed by the user. */
  ENTERED,
  /** Learned from a test cut. */
  TAUGHT,
  /** From a table, or taken over from something else: printed as assumed wherever it counts. */
  ASSUMED,
  /** Not known. */
  MISSING;

  /** As written in documents: {@code measured}, … */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
