package rundlauf.docs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A fenced block of a page.
 *
 * @param place page and line, for messages
 * @param info what stands behind the opening fence, such as {@code sh tour}
 */
record Fence(String place, String info, String text) {
  static List<Fence> in(Path page) {
    List<Fence> fences = new ArrayList<>();
    String name = Pages.ROOT.relativize(page).toString();
    List<String> inside = new ArrayList<>();
    String info = "";
    int opened = 0;
    int line = 0;
    for (String row : Pages.text(page).lines().toList()) {
      line++;
      if (!row.stripLeading().startsWith("```")) {
        inside.add(row);
      } else if (opened == 0) {
        opened = line;
        info = row.strip().substring(3).strip();
        inside.clear();
      } else {
        fences.add(new Fence(name + ":" + opened, info, String.join("\n", inside) + "\n"));
        opened = 0;
      }
    }
    if (opened > 0) {
      throw new IllegalStateException(name + ":" + opened + ": the block is not closed");
    }
    return fences;
  }

  String language() {
    return info.replaceFirst(" .*", "");
  }
}
