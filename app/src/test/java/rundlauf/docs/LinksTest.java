package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every link inside the docs leads somewhere. */
class LinksTest {
  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)\\s]+)\\)");

  @Test
  void everyLinkResolves() {
    List<String> broken = new ArrayList<>();
    int seen = 0;
    for (Path page : Pages.all()) {
      for (String target : targets(page)) {
        seen++;
        if (!resolves(page, target)) {
          broken.add(Pages.ROOT.relativize(page) + " -> " + target);
        }
      }
    }
    assertThat(broken).isEmpty();
    assertThat(seen).isGreaterThan(10);
  }

  private static List<String> targets(Path page) {
    String prose =
        Pages.text(page).replaceAll("(?ms)^\\s*```.*?^\\s*```", "").replaceAll("`[^`\n]*`", "");
    List<String> targets = new ArrayList<>();
    Matcher matcher = LINK.matcher(prose);
    while (matcher.find()) {
      targets.add(matcher.group(1));
    }
    return targets;
  }

  private static boolean resolves(Path page, String target) {
    if (target.matches("[a-z]+:.*")) {
      return target.startsWith("https://") || target.startsWith("mailto:");
    }
    String[] parts = target.split("#", 2);
    Path file = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
    if (!file.startsWith(Pages.ROOT) || !Files.exists(file)) {
      return false;
    }
    return parts.length == 1 || anchors(file).contains(parts[1]);
  }

  private static List<String> anchors(Path page) {
    return Pages.text(page)
        .lines()
        .filter(line -> line.matches("#{1,6} .*"))
        .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT))
        .map(title -> title.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .toList();
  }
}
