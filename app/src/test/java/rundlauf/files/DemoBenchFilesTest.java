package rundlauf.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

class DemoBenchFilesTest {
  private static final Path SOURCE = Path.of("..", "demo", "bench");

  @TempDir Path folder;

  @Test
  void unpackedItIsTheBenchOfTheSources() throws IOException {
    Path bench = folder.resolve("new").resolve("bench");
    DemoBenchFiles.unpack(bench);
    for (String name : DemoBenchFiles.names()) {
      assertThat(bench.resolve(name)).hasSameBinaryContentAs(SOURCE.resolve(name));
    }
    assertThat(bench.resolve("bench.yaml")).exists();
  }

  @Test
  void anEmptyFolderIsTaken() throws IOException {
    DemoBenchFiles.unpack(folder);
    assertThat(folder.resolve("bench.yaml")).exists();
  }

  @Test
  void aFolderInWhichSomethingLiesIsRefusedAndLeftAlone() throws IOException {
    Path mine = Files.writeString(folder.resolve("bench.yaml"), "mine");
    assertThatThrownBy(() -> DemoBenchFiles.unpack(folder))
        .isInstanceOfSatisfying(
            Refused.class,
            r ->
                assertThat(Sentences.refusal(r).line())
                    .isEqualTo(
                        folder
                            + ": the folder \""
                            + folder
                            + "\" is not empty, and nothing in it is to be overwritten — name a"
                            + " folder that is new or empty, or leave out --out to have one made"));
    assertThat(mine).hasContent("mine");
    try (var within = Files.list(folder)) {
      assertThat(within).containsExactly(mine);
    }
  }

  @Test
  void aFileInPlaceOfTheFolderIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("out"), "mine");
    assertThatThrownBy(() -> DemoBenchFiles.unpack(file))
        .isInstanceOfSatisfying(
            Refused.class, r -> assertThat(r.saying().code()).isEqualTo("demo-folder-is-file"));
    assertThat(file).hasContent("mine");
  }
}
