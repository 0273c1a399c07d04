package rundlauf.render.methods;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the plain notation of formulas: {@code _} puts the name, or the bracket, after it below;
 * {@code ^} the factor after it above; {@code a / b}, with spaces, is a fraction of the products
 * beside it and {@code a/b} stays on one line; {@code √(…)} stands over its bracket; {@code min
 * over … of} and {@code Σ_k} have below them what they run over.
 */
final class FormulaParser {
  private static final String OPERATORS = "=+−-±·≤≥,…";
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻ᵀᴴ″";
  private static final List<String> PLAIN =
      List.of("0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "−", "T", "H", "″");
  private static final Pattern OVER = Pattern.compile(" over (.+?) of ");
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
  private static final Pattern WORD = Pattern.compile("[A-Za-z]+\\d*");
  private static final Pattern BELOW = Pattern.compile("[\\p{L}\\d]+(,\\p{L}+)*");

  private final String text;
  private int at;

  FormulaParser(String text) {
    this.text = text;
  }

  /** The whole formula. */
  String all() {
    String row = row('\0');
    if (at < text.length()) {
      throw unknown();
    }
    return row;
  }

  private IllegalArgumentException unknown() {
    return new IllegalArgumentException("not understood at " + at + " in formula: " + text);
  }

  private char now() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private boolean ahead(String next) {
    return text.startsWith(next, at);
  }

  private Optional<Matcher> taken(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    if (!matcher.lookingAt()) {
      return Optional.empty();
    }
    at = matcher.end();
    return Optional.of(matcher);
  }

  /** Operators and products up to a closing bracket, or the end. */
  private String row(char end) {
    StringBuilder out = new StringBuilder();
    boolean fresh = true;
    while (now() != end && at < text.length()) {
      char c = now();
      if (c == ' ') {
        at++;
      } else if (OPERATORS.indexOf(c) >= 0) {
        at++;
        boolean sign = fresh && (c == '−' || c == '-');
        out.append(sign ? "<mo form=\"prefix\">" : "<mo>").append(c).append("</mo>");
        fresh = true;
      } else {
        out.append(product(end));
        fresh = false;
      }
    }
    return out.toString();
  }

  /** Factors side by side; a spaced stroke puts those before it over the one run after it. */
  private String product(char end) {
    Piece out = run(end);
    while (true) {
      if (ahead(" / ")) {
        at += 3;
        out = Piece.of("<mfrac>" + out.bare() + run(end).bare() + "</mfrac>");
      } else if (now() == ' ' && begins(at + 1, end)) {
        at++;
        boolean words = at > 1 && word(at - 3) && word(at);
        String gap = "<mspace width=\"" + (words ? "0.3em" : "0.17em") + "\"></mspace>";
        out = Piece.of(out.row() + gap + run(end).row());
      } else {
        return out.row();
      }
    }
  }

  private boolean word(int index) {
    return index >= 0
        && index + 1 < text.length()
        && Character.isLetter(text.charAt(index))
        && Character.isLetter(text.charAt(index + 1));
  }

  private boolean begins(int index, char end) {
    if (index >= text.length() || text.charAt(index) == end) {
      return false;
    }
    char c = text.charAt(index);
    return Character.isLetterOrDigit(c) || "([|√∞∫".indexOf(c) >= 0;
  }

  /** Factors without a space between them, and what a stroke divides them by. */
  private Piece run(char end) {
    Piece out = factor();
    while (begins(at, end) || now() == '/') {
      String stroke = now() == '/' ? "<mo lspace=\"0\" rspace=\"0\">/</mo>" : "";
      at += stroke.isEmpty() ? 0 : 1;
      out = Piece.of(out.row() + stroke + factor().row());
    }
    return out;
  }

  private Piece factor() {
    Piece base = atom();
    String below = "";
    if (now() == '_') {
      at++;
      below = below();
    }
    String above = above();
    if (below.isEmpty() && above.isEmpty()) {
      return base;
    }
    String kind = above.isEmpty() ? "msub" : below.isEmpty() ? "msup" : "msubsup";
    return Piece.of("<" + kind + ">" + base.row() + below + above + "</" + kind + ">");
  }

  private String below() {
    if (now() == '(') {
      at++;
      return bracketed(')');
    }
    return Names.below(taken(BELOW).orElseThrow(this::unknown).group());
  }

  private String bracketed(char end) {
    String row = row(end);
    if (now() != end) {
      throw unknown();
    }
    at++;
    return "<mrow>" + row + "</mrow>";
  }

  private String above() {
    StringBuilder out = new StringBuilder();
    while (at < text.length() && RAISED.indexOf(now()) >= 0) {
      String plain = PLAIN.get(RAISED.indexOf(now()));
      String tag = Character.isDigit(plain.charAt(0)) ? "mn" : plain.equals("−") ? "mo" : "mi";
      out.append("<" + tag + ">" + plain + "</" + tag + ">");
      at++;
    }
    if (now() == '^') {
      at++;
      boolean minus = now() == '−';
      at += minus ? 1 : 0;
      out.append(minus ? "<mo form=\"prefix\">−</mo>" : "").append(atom().row());
    }
    return out.isEmpty() ? "" : "<mrow>" + out + "</mrow>";
  }

  private Piece atom() {
    char c = now();
    int closing = "([|".indexOf(c);
    if (closing >= 0) {
      at++;
      return Piece.fenced(c, bracketed(")]|".charAt(closing)), ")]|".charAt(closing));
    }
    Optional<Matcher> number = taken(NUMBER);
    if (number.isPresent()) {
      return Piece.of("<mn>" + number.get().group() + "</mn>");
    }
    if (c < 128 && Character.isLetter(c)) {
      return name();
    }
    at++;
    if (c == '√') {
      return Piece.of("<msqrt>" + factor().bare() + "</msqrt>");
    }
    if (c == 'Σ' || c == '∫') {
      return big(c);
    }
    if (Character.isLetter(c) || c == '∞') {
      return Piece.of("<mi>" + c + "</mi>");
    }
    throw unknown();
  }

  /** A sum has its index below it; it may stand before a space, an integral before its factor. */
  private Piece big(char c) {
    String sign = c == 'Σ' ? "<mo>∑</mo>" : "<mo>∫</mo>";
    if (now() != '_') {
      return Piece.of(sign);
    }
    at++;
    return Piece.of("<munder>" + sign + below() + "</munder>");
  }

  private Piece name() {
    String word = taken(WORD).orElseThrow(this::unknown).group();
    if (word.equals("min") || word.equals("max")) {
      Optional<Matcher> over = taken(OVER);
      if (over.isPresent()) {
        at--;
        String range = new FormulaParser(over.get().group(1)).all();
        return Piece.of("<munder><mo>" + word + "</mo><mrow>" + range + "</mrow></munder>");
      }
    }
    if (Names.isDifferential(word)) {
      at -= word.length() - 1;
      return Piece.of("<mi mathvariant=\"normal\">d</mi>" + factor().row());
    }
    return Piece.of(Names.name(word));
  }

  /**
   * A piece of a row.
   *
   * @param row as it stands beside others
   * @param bare as it stands over or under a line, where it needs no bracket; one element
   */
  private record Piece(String row, String bare) {
    static Piece of(String row) {
      return new Piece(row, "<mrow>" + row + "</mrow>");
    }

    static Piece fenced(char open, String inside, char close) {
      boolean tall = inside.contains("<mfrac") || inside.contains("<munder");
      String mo = tall ? "<mo>" : "<mo stretchy=\"false\">";
      String prefix = mo.replace(">", " form=\"prefix\">");
      String postfix = mo.replace(">", " form=\"postfix\">");
      String row = "<mrow>" + prefix + open + "</mo>" + inside + postfix + close + "</mo></mrow>";
      return new Piece(row, open == '(' ? inside : row);
    }
  }
}
