package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
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

  @Test
  void everyPageIsReachedFromTheReadme() {
    Set<Path> reached = new TreeSet<>();
    Deque<Path> open = new ArrayDeque<>(List.of(Pages.ROOT.resolve("README.md")));
    while (!open.isEmpty()) {
      Path page = open.pop();
      if (reached.add(page)) {
        targets(page).stream()
            .filter(target -> target.matches("[^:]*\\.md(#.*)?"))
            .map(target -> page.resolveSibling(target.replaceFirst("#.*", "")).normalize())
            .filter(Files::exists)
            .forEach(open::push);
      }
    }
    assertThat(reached).containsExactlyInAnyOrderElementsOf(Pages.all());
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
