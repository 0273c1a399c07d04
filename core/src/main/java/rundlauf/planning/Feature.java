package rundlauf.planning;

import java.util.Locale;

/** What a job cuts. */
public enum Feature {
  /** As wide as the cutter. */
  SLOT,
  /** Wider than the cutter. */
  POCKET,
  /** Along a line, stock beside it or not. */
  PROFILE,
  /** A groove with a V-tool. */
  ENGRAVE,
  /** A hole; not predicted yet. */
  DRILL;

  static Feature of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** As written in jobs. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
