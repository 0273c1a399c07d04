package rundlauf.render.methods;

import java.util.regex.Pattern;

/**
 * A formula in the plain notation of the method pages, as MathML: {@code _} puts the letters after
 * it below, {@code ^} the factor after it above, {@code √(…)} stands over its bracket, everything
 * else is written as it reads.
 */
final class Formula {
  /** What no name of a field, file or column has. */
  private static final Pattern MARK = Pattern.compile("[=√Σ·^≤≥Φθφσ∞∫−η²³″]| / |\\d+ / ");

  /** What a file has and no formula: a field with its value, a quantity with its limits. */
  private static final Pattern TYPED = Pattern.compile(".*[:{}#\"'].*|[\\d.]+ ± [\\d.]+ \\w+");

  private final String text;
  private final StringBuilder out = new StringBuilder();
  private int at;

  private Formula(String text) {
    this.text = text;
  }

  /** Whether a piece of code on a page is a formula. */
  static boolean is(String code) {
    return MARK.matcher(code).find() && !TYPED.matcher(code).matches();
  }

  /**
   * The formula in MathML, its source beside it for who cannot see it.
   *
   * @param display whether it stands on a line of its own
   */
  static String mathMl(String text, boolean display) {
    Formula formula = new Formula(text.strip());
    formula.row('\0');
    return "<math"
        + (display ? " display=\"block\"" : "")
        + " alttext=\""
        + escaped(text.strip())
        + "\"><mrow>"
        + formula.out
        + "</mrow></math>";
  }

  /** Everything up to a closing bracket. */
  private void row(char end) {
    while (at < text.length() && text.charAt(at) != end) {
      item();
    }
  }

  private void item() {
    char c = text.charAt(at);
    if (c == ' ') {
      spaces();
      return;
    }
    int start = out.length();
    atom();
    String base = out.substring(start);
    String below = at < text.length() && text.charAt(at) == '_' ? script(true) : "";
    String above = above();
    if (!below.isEmpty() || !above.isEmpty()) {
      out.setLength(start);
      out.append(scripted(base, below, above));
    }
  }

  private static String scripted(String base, String below, String above) {
    if (above.isEmpty()) {
      return "<msub>" + base + below + "</msub>";
    }
    return below.isEmpty()
        ? "<msup>" + base + above + "</msup>"
        : "<msubsup>" + base + below + above + "</msubsup>";
  }

  private String above() {
    if (at >= text.length()) {
      return "";
    }
    if (text.charAt(at) == '^') {
      return script(false);
    }
    int power = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(text.charAt(at));
    if (power < 0) {
      return "";
    }
    at++;
    return "<mn>" + power + "</mn>";
  }

  private void spaces() {
    int from = at;
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    if (at - from > 1 && !(at < text.length() && text.charAt(at) == '=')) {
      out.append("<mspace width=\"2em\"></mspace>");
    } else if (isLetter(from - 1) && isLetter(at)) {
      out.append("<mspace width=\"0.3em\"></mspace>");
    }
  }

  private boolean isLetter(int index) {
    return index >= 0 && index < text.length() && Character.isLetter(text.charAt(index));
  }

  private void atom() {
    char c = text.charAt(at);
    if (Character.isDigit(c)) {
      out.append("<mn>").append(run("[\\d.]")).append("</mn>");
    } else if (isLatin(c)) {
      out.append("<mi>").append(run("[A-Za-z0-9]")).append("</mi>");
    } else if (Character.isLetter(c)) {
      at++;
      out.append("<mi>").append(c).append("</mi>");
    } else if (c == '√') {
      at++;
      root();
    } else {
      at++;
      out.append("()[]|".indexOf(c) >= 0 ? "<mo stretchy=\"false\">" : "<mo>");
      out.append(escaped(String.valueOf(c))).append("</mo>");
    }
  }

  private void root() {
    out.append("<msqrt>");
    if (at < text.length() && text.charAt(at) == '(') {
      at++;
      balanced();
    } else {
      item();
    }
    out.append("</msqrt>");
  }

  /** What stands within a bracket that is open, without the bracket itself. */
  private void balanced() {
    int open = 1;
    while (at < text.length()) {
      char c = text.charAt(at);
      open += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (open == 0) {
        at++;
        return;
      }
      item();
    }
  }

  /** What stands below or above: a bracket, or letters and digits in one piece. */
  private String script(boolean below) {
    at++;
    int start = out.length();
    out.append("<mrow>");
    if (at < text.length() && text.charAt(at) == '(') {
      at++;
      balanced();
    } else if (below) {
      out.append("<mi>").append(run("[\\p{L}\\d]|,(?=\\p{L})")).append("</mi>");
    } else {
      String sign = run("[−+-]");
      out.append(sign.isEmpty() ? "" : "<mo>" + sign + "</mo>");
      atom();
    }
    String script = out.append("</mrow>").substring(start);
    out.setLength(start);
    return script;
  }

  /** As many characters as a pattern takes one by one. */
  private String run(String pattern) {
    var taking = Pattern.compile(pattern).matcher(text);
    int from = at;
    while (at < text.length() && taking.region(at, text.length()).lookingAt()) {
      at = taking.end();
    }
    return escaped(text.substring(from, at));
  }

  private static boolean isLatin(char c) {
    return c < 128 && Character.isLetter(c);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
