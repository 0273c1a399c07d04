package rundlauf.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.quantity.Refused;
import rundlauf.readings.RunoutReadings;
import rundlauf.render.Sentences;

/** Benches from folders and archives. All of them are invented. */
class BenchFilesTest {
  private static final String BENCH =
      "bench: The inlay corner\nindicators:\n  - {name: plunger dial, division: 0.01 mm}\n";
  private static final String TRIAL =
      """
      trial: runout
      indicator: plunger dial
      readings: turn.csv
      """;
  private static final String CSV = "angle_deg;reading_mm\n0;0\n90;0,01\n180;0,02\n270;0,01\n";

  @TempDir private Path folder;

  private static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("bench.yaml", BENCH);
    files.put("trials/b.yaml", TRIAL);
    files.put("trials/a/first.yaml", TRIAL);
    files.put("trials/turn.csv", CSV);
    files.put("trials/a/turn.csv", CSV);
    files.put("trials/notes.txt", "not a trial");
    return files;
  }

  @Test
  void aFolderWithItsTrialsInOrder() throws IOException {
    write(files());
    assertBench(BenchFiles.read(folder, "mine"), "mine");
  }

  @Test
  void anArchiveOfTheFilesOrOfTheFolder() throws IOException {
    Path zip = folder.resolve("mine.zip");
    pack(zip, "", files());
    assertBench(BenchFiles.read(zip, "mine.zip"), "mine.zip");
    pack(zip, "bench/", files());
    assertBench(BenchFiles.read(zip, "mine.zip"), "mine.zip/bench");
  }

  @Test
  void theBenchAroundATrial() throws IOException {
    write(files());
    for (String trial : List.of("trials/b.yaml", "trials/a/first.yaml")) {
      Bench around = BenchFiles.around(folder.resolve(trial)).orElseThrow();
      assertThat(around.name()).isEqualTo("The inlay corner");
      assertThat(around.trials()).isEmpty();
    }
    assertThat(BenchFiles.around(folder.resolve("b.yaml"))).isEmpty();
  }

  @Test
  void noBenchInAFolderOrAnArchive() throws IOException {
    String line =
        "/bench.yaml: a bench has its bench.yaml here, and there is none — name the folder, or the ZIP"
            + " archive of it, that holds bench.yaml and trials/";
    assertThat(refused(folder, "mine")).isEqualTo("mine" + line);
    Path zip = folder.resolve("mine.zip");
    pack(zip, "", Map.of("a.txt", "x"));
    assertThat(refused(zip, "mine.zip")).isEqualTo("mine.zip" + line);
    assertThat(refused(folder.resolve("other"), "other"))
        .isEqualTo(
            "other: there is no file or folder of this name"
                + " — check the name, and the folder you stand in");
  }

  @Test
  void aFileThatIsNoArchive() throws IOException {
    Path file = Files.writeString(folder.resolve("a.yaml"), TRIAL);
    assertThat(refused(file, "a.yaml"))
        .isEqualTo(
            "a.yaml: the file is neither a folder nor a ZIP archive that can be read: zip END header"
                + " not found — give the bench's folder or a ZIP archive of it");
  }

  @Test
  void anArchiveThatLeadsOut() throws IOException {
    Path zip = folder.resolve("mine.zip");
    for (String path : List.of("../bench.yaml", "/bench.yaml", "a/../../b", "c:/x", "a\\b")) {
      pack(zip, "", Map.of(path, BENCH));
      assertThat(refused(zip, "mine.zip"))
          .isEqualTo(
              "mine.zip: \""
                  + path
                  + "\" does not name a file in this folder — write the file's name alone, or a folder"
                  + " below and the name with / between: no drive, no .. and no leading /");
    }
  }

  @Test
  void anArchiveThatBursts() throws IOException {
    Path zip = folder.resolve("mine.zip");
    Map<String, String> files = new LinkedHashMap<>(files());
    files.put("trials/turn.csv", "# remark\n".repeat(5_000_000));
    pack(zip, "", files);
    assertThat(refused(zip, "mine.zip"))
        .isEqualTo(
            "mine.zip/trials/b.yaml:3: readings: the archive grows out of measure when unpacked (the"
                + " most is 512000000 bytes) — unpack it yourself, look at what it is, and give the folder");
  }

  @Test
  void anArchiveOfTooManyFiles() throws IOException {
    Path zip = folder.resolve("mine.zip");
    Map<String, String> files = new LinkedHashMap<>();
    for (int i = 0; i <= Bounds.FILES; i++) {
      files.put("f" + i, "");
    }
    pack(zip, "", files);
    assertThat(refused(zip, "mine.zip"))
        .isEqualTo(
            "mine.zip: there are more than 10000 files — keep one bench in a folder, and nothing else");
  }

  @Test
  void anArchiveWithOneFileTwice() throws IOException {
    Path zip = folder.resolve("mine.zip");
    Map<String, String> files = new LinkedHashMap<>();
    files.put("bench.yaml", BENCH);
    files.put("bench.yamm", "bench: Another\n");
    pack(zip, "", files);
    String bytes = Files.readString(zip, StandardCharsets.ISO_8859_1);
    Files.writeString(zip, bytes.replace("bench.yamm", "bench.yaml"), StandardCharsets.ISO_8859_1);
    assertThat(refused(zip, "mine.zip"))
        .isEqualTo("mine.zip: the archive holds \"bench.yaml\" twice — pack the folder anew");
  }

  @Test
  void linksInABenchAreNotFollowed() throws IOException {
    write(files());
    Path outside = Files.createTempFile("outside", ".yaml");
    Files.createSymbolicLink(folder.resolve("trials/c.yaml"), outside);
    assertThat(BenchFiles.read(folder, "mine").trials()).hasSize(2);
    Files.delete(outside);
  }

  private static void assertBench(Bench bench, String name) {
    assertThat(bench.trials())
        .extracting(Trial::file)
        .containsExactly(name + "/trials/a/first.yaml", name + "/trials/b.yaml");
    RunoutReadings readings =
        (RunoutReadings) Understanding.of(bench.trials().get(1), Optional.of(bench));
    assertThat(readings.indicator().record()).isEqualTo("indicator/plunger dial");
    assertThat(readings.sweeps().get(0).reading().max()).isEqualTo(2e-5);
  }

  private static String refused(Path path, String name) {
    Refused refused = catchThrowableOfType(Refused.class, () -> BenchFiles.read(path, name));
    return Sentences.refusal(refused).line();
  }

  private void write(Map<String, String> files) throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  private static void pack(Path zip, String inside, Map<String, String> files) throws IOException {
    try (OutputStream out = Files.newOutputStream(zip);
        ZipOutputStream packed = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        packed.putNextEntry(new ZipEntry(inside + file.getKey()));
        packed.write(file.getValue().getBytes(StandardCharsets.UTF_8));
        packed.closeEntry();
      }
    }
  }
}
