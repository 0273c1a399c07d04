package rundlauf.render.methods;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How names in formulas are set: one letter slanted, words and functions upright. */
final class Names {
  private static final Pattern NUMBERED = Pattern.compile("([A-Za-z])(\\d+)");

  /** Force and compliance with their axes, and the constants of Kienzle's equation. */
  private static final Pattern INDEXED =
      Pattern.compile("([FC])([a-z]{1,2})|(k)([a-z]\\d*)|(m)(c)|(K)([a-z]{1,2})");

  private static final List<String> DIFFERENTIALS = List.of("dz", "ds", "dF");

  private Names() {}

  /** Whether a word is a d and the variable that it is of. */
  static boolean isDifferential(String word) {
    return DIFFERENTIALS.contains(word);
  }

  /** A name of Latin letters, with a number perhaps. */
  static String name(String word) {
    Matcher numbered = NUMBERED.matcher(word);
    if (numbered.matches()) {
      return "<msub><mi>" + numbered.group(1) + "</mi><mn>" + numbered.group(2) + "</mn></msub>";
    }
    Matcher indexed = INDEXED.matcher(word);
    if (!indexed.matches()) {
      return "<mi>" + word + "</mi>";
    }
    int base = 1;
    while (indexed.group(base) == null) {
      base += 2;
    }
    return "<msub><mi>"
        + indexed.group(base)
        + "</mi><mi>"
        + indexed.group(base + 1)
        + "</mi></msub>";
  }

  /** What stands below: a word upright, up to two letters as the variables that they are. */
  static String below(String name) {
    StringBuilder out = new StringBuilder("<mrow>");
    for (String part : name.split("(?=,)|(?<=,)", -1)) {
      if (part.equals(",")) {
        out.append("<mo>,</mo>");
      } else if (part.matches("\\p{L}{1,2}")) {
        part.chars().forEach(c -> out.append("<mi>").append((char) c).append("</mi>"));
      } else {
        out.append(part.matches("\\d+") ? "<mn>" + part + "</mn>" : "<mi>" + part + "</mi>");
      }
    }
    return out.append("</mrow>").toString();
  }
}
