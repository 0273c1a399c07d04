package rundlauf.files;

import java.util.Locale;
import java.util.regex.Pattern;

/** One text of a YAML document. */
final class YamlScalar {
  private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_-]*");

  private YamlScalar() {}

  /** Whether it can stand as a field's name without quotes. */
  static boolean isName(String text) {
    return NAME.matcher(text).matches();
  }

  /** Whether it is written as a block: it has lines, and nothing that must be escaped. */
  static boolean isLiteral(String text) {
    return text.indexOf('\n') >= 0
        && !text.isBlank()
        && text.codePoints().allMatch(c -> c == '\n' || c == '\t' || !isEscaped(c));
  }

  /** A block, indented by two against its field; every character kept, the last breaks too. */
  static String literal(String text, String indent) {
    String chomping = text.endsWith("\n\n") ? "+" : text.endsWith("\n") ? "" : "-";
    String body = text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
    // the indent is said outright, so that a text may begin with blanks
    StringBuilder block = new StringBuilder("|2").append(chomping);
    for (String line : body.split("\n", -1)) {
      block.append('\n').append(line.isEmpty() ? "" : indent + line);
    }
    return block.toString();
  }

  /** In double quotes, with what cannot stand there escaped. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> quoted.append(escaped(c)));
    return quoted.append('"').toString();
  }

  private static String escaped(int c) {
    if (c == '"' || c == '\\') {
      return "\\" + (char) c;
    }
    if (!isEscaped(c)) {
      return Character.toString(c);
    }
    return c < 0x100
        ? String.format(Locale.ROOT, "\\x%02X", c)
        : c < 0x10000
            ? String.format(Locale.ROOT, "\\u%04X", c)
            : String.format(Locale.ROOT, "\\U%08X", c);
  }

  /** Controls, breaks of any kind, marks that cannot be seen and halves of a pair. */
  private static boolean isEscaped(int c) {
    boolean control = c < 0x20 || (c >= 0x7f && c <= 0xa0);
    boolean unseen = c == 0x2028 || c == 0x2029 || c == 0xfeff || (c & 0xfffe) == 0xfffe;
    return control || unseen || (c >= 0xd800 && c <= 0xdfff);
  }
}
