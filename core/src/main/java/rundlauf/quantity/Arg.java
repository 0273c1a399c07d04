package rundlauf.quantity;

/** A typed argument of a saying; the sentence is made elsewhere. */
public sealed interface Arg {
  /** A word: a name, or what was typed. */
  record Word(String text) implements Arg {}

  /** A count. */
  record Count(long value) implements Arg {}

  /** A bare number without unit: a probability, a ratio. */
  record Number(double value) implements Arg {}

  /** A quantity: its value in SI and the unit to print it in. */
  record Amount(double si, Unit unit) implements Arg {}

  static Arg of(String text) {
    return new Word(text);
  }

  static Arg of(long count) {
    return new Count(count);
  }

  static Arg number(double value) {
    return new Number(value);
  }

  static Arg of(double si, Unit unit) {
    return new Amount(si, unit);
  }
}
