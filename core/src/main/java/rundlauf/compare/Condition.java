package rundlauf.compare;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rundlauf.quantity.Unit;

/**
 * Something that must be the same for a comparison to be fair.
 *
 * @param name a code with a word of its own in the bundle
 * @param ofA as stated in a's trial; empty when it is not
 * @param ofB as stated in b's
 * @param tolerance share of the larger by which two quantities may differ
 */
record Condition(String name, Optional<String> ofA, Optional<String> ofB, double tolerance) {
  private static final Pattern QUANTITY = Pattern.compile("([0-9.]+)\\s*(\\S.*)");

  static Condition of(String name, Optional<String> a, Optional<String> b, double tolerance) {
    return new Condition(name, a, b, tolerance);
  }

  boolean unsaid() {
    return ofA.isEmpty() && ofB.isEmpty();
  }

  boolean same() {
    if (ofA.isEmpty() || ofB.isEmpty()) {
      return unsaid();
    }
    Optional<double[]> a = si(ofA.get());
    Optional<double[]> b = si(ofB.get());
    if (a.isPresent() && b.isPresent() && a.get()[1] == b.get()[1]) {
      double most = Math.max(a.get()[0], b.get()[0]);
      return Math.abs(a.get()[0] - b.get()[0]) <= tolerance * most + 1e-12;
    }
    return plain(ofA.get()).equals(plain(ofB.get()));
  }

  /** Value in SI and the ordinal of its dimension, where the text is a quantity. */
  private static Optional<double[]> si(String text) {
    Matcher m = QUANTITY.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    Optional<Unit> unit = Unit.ofSymbol(m.group(2).strip());
    try {
      double number = Double.parseDouble(m.group(1));
      return unit.map(u -> new double[] {u.toSi(number), u.dimension().ordinal()});
    } catch (NumberFormatException notANumber) {
      return Optional.empty();
    }
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }
}
