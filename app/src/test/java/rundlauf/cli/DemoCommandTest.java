package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.concurrent.FutureTask;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Main;
import rundlauf.Ran;
import rundlauf.files.DemoBenchFiles;

/** What {@code demo} does for someone who has nothing of their own yet. */
class DemoCommandTest {
  @TempDir Path folder;

  private static Ran demo(Path out) {
    return Ran.of("demo", "--no-serve", "--draws", "400", "--out", out.toString());
  }

  /** And in a folder of the same name once more the same, byte for byte. */
  @Test
  void itLaysTheBenchOutPrintsItSideBySideAndWritesTheReport() throws IOException {
    Path out = folder.resolve("new");
    Ran ran = demo(out);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).containsSubsequence("Job: ", "Whether the cut chatters has not been");
    // Shrike is held: the same ending as for a bench of one's own.
    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.lines().get(0))
        .isEqualTo("The inlay corner of a luthier's workshop (invented): 8 setups side by side");
    assertThat(ran.out())
        .contains("Shrike must not be powered")
        .contains("Heron 3 mm is better than Wren 3 mm");
    assertThat(ran.lines())
        .endsWith(
            "Everything above is invented. The bench it came from lies in " + out.resolve("bench"),
            "The report, to be opened in a browser, is " + out.resolve("report.html"));
    String report = Files.readString(out.resolve("report.html"));
    assertThat(report).contains("Shrike", "(invented)");
    for (String name : DemoBenchFiles.names()) {
      assertThat(out.resolve("bench").resolve(name)).exists();
    }
    clear(out);
    assertThat(demo(out)).isEqualTo(ran);
    assertThat(Files.readString(out.resolve("report.html"))).isEqualTo(report);
  }

  @Test
  void aUsedFolderIsRefusedAndLeftAsItIs() throws IOException {
    Path mine = Files.writeString(folder.resolve("report.html"), "mine");
    Ran ran = Ran.of("demo", "--no-serve", "--out", folder.toString());
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .isEqualTo(
            (folder + ": the folder \"" + folder + "\" is not empty, and nothing in it is to be")
                + " overwritten — name a folder that is new or empty, or leave out --out to have"
                + " one made\n");
    try (Stream<Path> within = Files.list(folder)) {
      assertThat(within).containsExactly(mine);
    }
    assertThat(mine).hasContent("mine");
  }

  @Test
  void whatCannotBeAFolderIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    Ran onFile = Ran.of("demo", "--no-serve", "--out", file.toString());
    assertThat(onFile.status()).isEqualTo(3);
    assertThat(onFile.err()).contains("is a file and not a folder — name a folder that is new");
    Ran below = Ran.of("demo", "--no-serve", "--out", file.resolve("below").toString());
    assertThat(below.status()).isEqualTo(3);
    assertThat(below.err())
        .contains("the demo could not be laid out in")
        .contains("— name a folder that you may write to");
    assertThat(file).hasContent("mine");
  }

  /** Its output is looked at while it serves; then it is stopped. */
  @Test
  void withoutAFolderItMakesAFreshOneAndServesItsWorkbookUntilItIsStopped() throws Exception {
    var out = new ByteArrayOutputStream();
    var status = new FutureTask<>(() -> Main.run(out, out, false, "demo", "--draws", "200"));
    Thread demo = new Thread(status);
    demo.start();
    Pattern open = Pattern.compile("The workbook is open at (http://127.0.0.1:\\d+/)");
    Matcher said = open.matcher("");
    while (demo.isAlive() && !said.reset(out.toString(StandardCharsets.UTF_8)).find()) {
      demo.join(50);
    }
    assertThat(said.reset(out.toString(StandardCharsets.UTF_8)).find()).isTrue();
    HttpRequest first = HttpRequest.newBuilder(URI.create(said.group(1) + "bench/1")).build();
    String page = HttpClient.newHttpClient().send(first, BodyHandlers.ofString()).body();
    assertThat(page).contains("The inlay corner of a luthier").contains("Heron 3 mm");
    demo.interrupt();
    assertThat(status.get()).isEqualTo(4);
    String kept = out.toString(StandardCharsets.UTF_8).replaceFirst("(?s).* kept in ", "");
    clear(Path.of(kept.strip().replaceFirst("/workbook[.]db[.]$", "")));
  }

  private static void clear(Path made) throws IOException {
    try (Stream<Path> all = Files.walk(made)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
