package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.DiskTrials;
import rundlauf.files.PublicationFolder;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Refused;
import rundlauf.render.HtmlReport;
import rundlauf.render.Sentences;

class PublishReportTest {
  private static final String DEMO = "../demo/bench";

  /** Fewer draws than a user gets: this is about the page, not the digits. */
  private static final Draws FEW = new Draws(Draws.DEFAULT_SEED, 400);

  @TempDir Path folder;

  private static String publish(Path out) {
    return publish(DEMO, out);
  }

  private static String publish(String bench, Path out) {
    var results =
        new CompareBench(new DiskTrials(), Work.sequential()).compare(bench, FEW).results();
    return new PublishReport(HtmlReport::write, new PublicationFolder(out))
        .publish(results, List.of());
  }

  @Test
  void theDemoBenchIsPublishedTheSameWhereverItLies() throws Exception {
    String first = Files.readString(Path.of(publish(folder.resolve("a"))));
    Path elsewhere = folder.resolve("moved/bench");
    DemoBenchFiles.unpack(elsewhere);
    String moved = publish(elsewhere.toString(), folder.resolve("b"));
    assertThat(Files.readString(Path.of(moved))).isEqualTo(first);
    assertThat(first)
        .contains("Invented demonstration data: nobody has taken these readings.")
        .contains("Shrike is on hold: do not power it")
        .doesNotContain("These readings were refused");
    assertThat(folder.resolve("a")).isDirectoryContaining(f -> f.endsWith("report.html"));
    assertThat(folder.resolve("a").toFile().list()).containsExactly("report.html");
  }

  /** A file of a kind that is not reduced yet may lie in a bench, and bars nobody's report. */
  @Test
  void aTrialThatIsNotReducedYetIsNamedInTheReport() throws Exception {
    Path bench = folder.resolve("bench");
    DemoBenchFiles.unpack(bench);
    Files.writeString(bench.resolve("trials/shrike-sound.yaml"), "trial: sound\ntitle: Heard\n");
    String report = Files.readString(Path.of(publish(bench.toString(), folder.resolve("out"))));
    assertThat(report).contains("Not reduced: Heard", "this version does not reduce them");
  }

  @Test
  void aPageThatCannotBeKeptIsRefusedInASentence() throws Exception {
    Path file = Files.writeString(folder.resolve("taken"), "a file, not a folder");
    assertThatThrownBy(() -> publish(file))
        .isInstanceOfSatisfying(
            Refused.class,
            refused ->
                assertThat(Sentences.refusal(refused).line())
                    .isEqualTo(
                        file.resolve("report.html")
                            + ": the page "
                            + file.resolve("report.html")
                            + " could not be written — choose a folder that exists or can be made,"
                            + " that you may write to and that has room for about 2 MB"));
  }
}
