package rundlauf.render.methods;

import java.util.regex.Pattern;

/** A formula in the plain notation of the method pages, as MathML. */
final class Formula {
  /** What no name of a field, file or column has. */
  private static final Pattern MARK =
      Pattern.compile("[=√·^≤≥|∞∫−″⁰¹²³⁴⁵⁶⁷⁸⁹⁻ᵀᴴ]|\\p{IsGreek}| [+/] |\\b\\w_\\w\\b|arg \\p{L}");

  /** A variable, or a product of variables. */
  private static final Pattern VARIABLES = Pattern.compile("[A-Za-z]( [A-Za-z])*");

  /** What a file has and no formula: a field with its value, a quantity with its limits. */
  private static final Pattern TYPED = Pattern.compile(".*[:{}#\"'].*|[\\d.]+ ± [\\d.]+ \\w+");

  private Formula() {}

  /** Whether a piece of code on a page is a formula. */
  static boolean is(String code) {
    return VARIABLES.matcher(code).matches()
        || MARK.matcher(code).find() && !TYPED.matcher(code).matches();
  }

  /**
   * The formula in MathML, its source beside it for who cannot see it.
   *
   * @param display whether it stands on a line of its own
   * @throws IllegalArgumentException when something in it has no meaning in that notation
   */
  static String mathMl(String text, boolean display) {
    String source = text.strip();
    return "<math"
        + (display ? " display=\"block\"" : "")
        + " alttext=\""
        + escaped(source)
        + "\"><mrow>"
        + new FormulaParser(source).all()
        + "</mrow></math>";
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
