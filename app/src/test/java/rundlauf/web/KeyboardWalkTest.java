package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** The written walk by keyboard can be walked, and the keyboard reaches all there is on a page. */
class KeyboardWalkTest {
  private static final Path WALK = Path.of("../docs/keyboard.md");
  private static final Pattern OPEN = Pattern.compile("Open `(/[^`]+)`\\.");
  private static final Pattern STEP =
      Pattern.compile(
          "\\d+\\. Tab to “(.+)”, (Enter|Space): (?:(it unfolds)|the heading is “(.+)”)\\.");
  private static final int MOST_TABS = 250;

  /** Marks all that can be reached and is seen, and forgets the mark when it has the focus. */
  private static final String WATCH =
      "const all = [...document.querySelectorAll('a[href], button, input, select, textarea,"
          + " summary, [tabindex=\"0\"]')].filter(e => e.checkVisibility() && e.type !== 'hidden');"
          + "all.forEach(e => e.dataset.unreached = '');"
          + "document.addEventListener('focusin', e => delete e.target.dataset.unreached);"
          + "document.activeElement.blur(); return all.length";

  private static final String FOCUSED =
      "return document.activeElement.innerText.replace(/\\s+/g, ' ').trim()";

  @TempDir static Path folder;
  private static OpenWorkbook workbook;
  private static Device device;

  @BeforeAll
  static void opened() throws Exception {
    workbook = OpenWorkbook.planned(folder);
    device = workbook.device().sized(Device.DESK, false);
  }

  @AfterAll
  static void closed() {
    workbook.close();
  }

  @Test
  void theWrittenWalkCanBeWalked() throws IOException {
    int steps = 0;
    for (String line : Files.readAllLines(WALK)) {
      Matcher open = OPEN.matcher(line);
      if (open.matches()) {
        workbook.read(open.group(1));
      }
      if (line.matches("\\d+\\. .*")) {
        Matcher step = STEP.matcher(line);
        assertThat(step.matches()).as(line).isTrue();
        walk(line, step);
        steps++;
      }
    }
    assertThat(steps).isGreaterThan(10);
  }

  private static void walk(String line, Matcher step) {
    int tabs = 0;
    do {
      device.type(Keys.TAB);
      assertThat(++tabs).as(line).isLessThan(MOST_TABS);
    } while (!String.valueOf(device.ask(FOCUSED)).startsWith(step.group(1)));
    device.type(step.group(2).equals("Enter") ? Keys.ENTER : " ");
    if (step.group(3) != null) {
      assertThat(device.ask("return document.activeElement.parentElement.open"))
          .as(line)
          .isEqualTo(true);
    } else {
      device.await(line, () -> device.text("h1").startsWith(step.group(4)));
      workbook.settle();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/bench/1",
        "/bench/1/side-by-side",
        "/bench/1/publish",
        "/bench/1/trial/9",
        "/bench/1/trial/18",
        "/bench/1/trial/25/figure?path=axis.tip.tir",
      })
  void tabReachesAllThatCanBeUsed(String path) {
    workbook.read(path);
    long all = (Long) device.ask(WATCH);
    assertThat(all).isGreaterThan(5);
    device.type(Keys.TAB.toString().repeat((int) all + 2));
    List<String> left =
        device.all("[data-unreached]").stream().map(e -> e.getAttribute("outerHTML")).toList();
    assertThat(left).isEmpty();
  }
}
