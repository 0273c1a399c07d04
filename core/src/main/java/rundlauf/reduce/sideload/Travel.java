package rundlauf.reduce.sideload;

import rundlauf.quantity.Figure;

/**
 * How far a body moves where the load is, over the force.
 *
 * @param position in the row, see {@link Row}
 * @param at the travel [m/N], or the limit that is known of it
 * @param kind which of them it is
 */
record Travel(int position, Figure at, Kind kind) {
  enum Kind {
    KNOWN,
    AT_LEAST,
    AT_MOST
  }

  /** Whether it limits the true travel from below. */
  boolean below() {
    return kind != Kind.AT_MOST;
  }

  /** Whether it limits the true travel from above. */
  boolean above() {
    return kind != Kind.AT_LEAST;
  }
}
