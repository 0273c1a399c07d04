package rundlauf.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number at the head of a typed text, and what follows it.
 *
 * @param value as typed, no unit applied
 * @param rest what stands behind the number, without blanks around it
 */
record NumberText(double value, String rest) {
  /** A typed number has no more characters than this; our choice, a double has 17 digits. */
  private static final int LONGEST = 40;

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<sign>[+\\-\u2212]?+)(?:(?<over>\\d++)/(?<under>\\d++)"
              + "|(?<whole>\\d*+)(?:(?<mark>[.,])(?<part>\\d*+))?+(?<power>[eE][+\\-]?\\d++)?+)");
  private static final Pattern NOT_FINITE =
      Pattern.compile(
          "[+\\-\u2212]?\\.?(?:nan|inf|infinity|\u221e)(?![a-z]).*", Pattern.CASE_INSENSITIVE);
  private static final Pattern LEFT_OVER = Pattern.compile("0\\d.*");

  /** Reads the number that {@code text} begins with. */
  static NumberText read(String text, boolean commaParts, Place place) {
    if (NOT_FINITE.matcher(text).matches()) {
      throw Refused.at(place, "number-not-finite", Arg.typed(text));
    }
    if (commaParts && LEFT_OVER.matcher(text).matches()) {
      throw Refused.at(place, "comma-parted", Arg.typed(text));
    }
    Matcher m = NUMBER.matcher(text);
    if (!m.lookingAt() || m.end() > LONGEST || isBare(m)) {
      throw Refused.at(place, "number-not-read", Arg.typed(text));
    }
    String rest = text.substring(m.end()).strip();
    refuseMoreDigits(m, text, rest, place);
    return new NumberText(m.group("over") != null ? fraction(m, place) : decimal(m, place), rest);
  }

  /** No digit at all. */
  private static boolean isBare(Matcher m) {
    return m.group("over") == null && digits(m).isEmpty();
  }

  private static String digits(Matcher m) {
    String part = m.group("part");
    return m.group("whole") + (part == null ? "" : part);
  }

  /** {@code 1 000}, {@code 1'000}, {@code 1.234,5}, {@code 1,234,567}, {@code 1 1/2}. */
  private static void refuseMoreDigits(Matcher m, String text, String rest, Place place) {
    boolean unit = Unit.ofSymbol(rest).isPresent(); // 1/s begins with a digit
    if (!unit && (rest.matches("['.,/]?\\d.*") || rest.startsWith(",") || rest.startsWith("."))) {
      throw Refused.at(place, "digits-parted", Arg.typed(text));
    }
    boolean grouped = ",".equals(m.group("mark")) && m.group("part").length() == 3;
    if (grouped && m.group("whole").matches(".*[1-9].*")) {
      throw Refused.at(place, "comma-ambiguous", Arg.typed(m.group()));
    }
  }

  private static double fraction(Matcher m, Place place) {
    double under = Double.parseDouble(m.group("under"));
    if (under == 0) {
      throw Refused.at(place, "number-not-finite", Arg.typed(m.group()));
    }
    return signed(m, Double.parseDouble(m.group("over")) / under);
  }

  private static double decimal(Matcher m, Place place) {
    String power = m.group("power") == null ? "" : m.group("power");
    String part = m.group("part") == null ? "" : m.group("part");
    double value = Double.parseDouble("0" + m.group("whole") + "." + part + "0" + power);
    boolean vanished = value == 0 && digits(m).matches(".*[1-9].*");
    if (Double.isInfinite(value) || vanished) {
      throw Refused.at(place, "number-out-of-range", Arg.typed(m.group()));
    }
    return signed(m, value);
  }

  private static double signed(Matcher m, double value) {
    // 0 + keeps a typed -0 from printing its sign anywhere
    return m.group("sign").matches("[-\u2212]") ? 0 - value : value;
  }
}
