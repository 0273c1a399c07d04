package rundlauf.cutting;

/** How well a number of the library is known. */
public enum Status {
  /** It stands in the named text. */
  PUBLISHED,
  /** From memory, unconfirmed. */
  MEMORY,
  /** A guess of ours, to be replaced by a test piece. */
  GUESS,
  /** Typed by the user. */
  ENTERED
}
