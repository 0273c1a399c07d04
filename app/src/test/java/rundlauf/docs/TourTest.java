package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The tour of the README, run as a reader would: each block marked {@code sh tour}, through the
 * launcher, and what it prints compared with the {@code text} block that follows.
 *
 * <p>In a shown output a line of {@code …} stands for any lines, {@code …} within a line for any
 * text. A block marked {@code sh tour ends N} is to end with exit status N.
 */
class TourTest {
  private static final Path README = Pages.ROOT.resolve("README.md");
  @TempDir static Path folder;

  /** The tour's folder looks like the repository to a reader, and may be written to. */
  @BeforeAll
  static void layOut() throws IOException {
    Path launcher = folder.resolve("rundlauf");
    Files.writeString(launcher, "exec '" + Pages.ROOT.resolve("rundlauf") + "' \"$@\"\n");
    assertThat(launcher.toFile().setExecutable(true)).isTrue();
    Path demo = Pages.ROOT.resolve("demo");
    for (Path file : Pages.filesUnder(demo, "")) {
      Path to = folder.resolve(Pages.ROOT.relativize(file).toString());
      if (Files.isDirectory(file)) {
        Files.createDirectories(to);
      } else {
        Files.copy(file, to);
      }
    }
  }

  @TestFactory
  Stream<DynamicTest> everyStepDoesWhatThePageShows() {
    List<DynamicTest> steps = new ArrayList<>();
    List<Fence> fences = Fence.in(README);
    for (int i = 0; i < fences.size(); i++) {
      Fence step = fences.get(i);
      if (step.info().startsWith("sh tour")) {
        boolean shown = i + 1 < fences.size() && fences.get(i + 1).info().equals("text");
        String expected = shown ? fences.get(i + 1).text() : "…";
        steps.add(dynamicTest(step.place(), () -> run(step, expected)));
      }
    }
    return steps.stream();
  }

  @Test
  void theReadmeHasATour() {
    assertThat(Fence.in(README))
        .filteredOn(f -> f.info().startsWith("sh tour"))
        .hasSizeGreaterThan(3);
  }

  private static void run(Fence step, String expected) throws Exception {
    Path out = folder.resolve("out.txt");
    Process process =
        new ProcessBuilder("bash", "-c", step.text())
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(folder.resolve("err.txt").toFile())
            .start();
    int ended = process.waitFor();
    String errors = Files.readString(folder.resolve("err.txt"));
    int asked =
        step.info().contains("ends ")
            ? Integer.parseInt(step.info().replaceFirst(".*ends ", ""))
            : 0;
    assertThat(ended).as(step.text() + errors).isEqualTo(asked);
    String printed = (Files.readString(out) + errors).replace(folder.toString(), "…");
    assertThat(Shown.fits(expected, printed))
        .as("shown:\n%s\nprinted:\n%s", expected, printed)
        .isTrue();
  }
}
