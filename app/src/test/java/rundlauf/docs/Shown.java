package rundlauf.docs;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Compares a shown output, in which {@code …} stands for what was left out, with the real one. */
final class Shown {
  private Shown() {}

  static boolean fits(String shown, String printed) {
    String pattern =
        shown.lines().map(String::stripTrailing).map(Shown::line).collect(Collectors.joining());
    String real = lines(printed).stream().map(line -> line + "\n").collect(Collectors.joining());
    return Pattern.compile(pattern).matcher(real).matches();
  }

  private static String line(String shown) {
    if (shown.strip().equals("…")) {
      return "(?:[^\n]*\n)*?";
    }
    return Stream.of(shown.split("…", -1)).map(Pattern::quote).collect(Collectors.joining("[^\n]*"))
        + "\n";
  }

  private static List<String> lines(String text) {
    return text.stripTrailing().lines().map(String::stripTrailing).toList();
  }
}
