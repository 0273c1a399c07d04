package rundlauf.quantity;

import java.util.List;

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

  /**
   * A term of the trade by its code, such as {@code length}; its word stands in the bundle under
   * {@code term.CODE}.
   */
  record Term(String code) implements Arg {}

  /** The most characters of typed text that a sentence repeats. */
  int MOST_TYPED = 48;

  static Arg of(String text) {
    return new Word(text);
  }

  /**
   * What was typed, fit to be repeated in a sentence: cut when long, control characters made
   * visible (they could move a terminal's cursor).
   */
  static Arg typed(String text) {
    boolean longer = text.codePointCount(0, text.length()) > MOST_TYPED;
    String kept = longer ? text.substring(0, text.offsetByCodePoints(0, MOST_TYPED)) + "…" : text;
    return new Word(kept.replaceAll("[\\p{Cc}\\p{Cf}\\x{2028}\\x{2029}]", "·"));
  }

  /** Names in their order, parted by commas. */
  static Arg list(List<String> names) {
    return new Word(String.join(", ", names));
  }

  static Arg term(String code) {
    return new Term(code);
  }

  static Arg of(long count) {
    return new Count(count);
  }

  static Arg number(double value) {
    return new Number(value);
  }

  /** An amount that was worked out, in no more digits than a reader can use. */
  static Arg about(double si, Unit unit) {
    return new Word(Format.about(si, unit));
  }

  static Arg of(double si, Unit unit) {
    return new Amount(si, unit);
  }
}
