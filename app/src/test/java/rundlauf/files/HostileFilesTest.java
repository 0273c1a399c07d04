package rundlauf.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.bench.Trial;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** Files that nobody wrote by hand: each is refused by a sentence, soon and in little memory. */
class HostileFilesTest {
  /** Of the processor's time, so that a busy machine does not fail the test. */
  private static final Duration SOON = Duration.ofSeconds(5);

  private static final String NAMES_CSV = "trial: speed\nreadings: a.csv\n";

  @TempDir private Path folder;

  @Test
  void fiftyMegabytesWithoutALineEnd() throws IOException {
    fill("a.yaml", "x", 50_000_000);
    assertRefused(
        "a.yaml: the file has more than 1000000 bytes"
            + " — split it; readings of a long trial belong in a CSV file beside it");
  }

  @Test
  void aTableOfOneLineOfFiftyMegabytes() throws IOException {
    write("a.yaml", NAMES_CSV);
    fill("a.csv", "1,2,", 12_500_000);
    assertRefused("a.csv:1: this line has more than 4000 bytes — begin a new line for every row");
  }

  @Test
  void aTableOfAHundredMegabytesOfRemarks() throws IOException {
    write("a.yaml", NAMES_CSV);
    fill("a.csv", "# nothing but remarks\n", 4_600_000);
    Refused refused = refused();
    assertThat(refused.saying().code()).isEqualTo("file-too-large");
    assertThat(refused.place().file()).isEqualTo("a.csv");
  }

  @Test
  void aTableOfThreeHundredThousandRows() throws IOException {
    write("a.yaml", NAMES_CSV);
    fill("a.csv", "setting,speed_rpm\n", 1, "1,8000\n", 300_000);
    assertRefused(
        "a.csv:250002: readings: the table has more than 500000 cells"
            + " — split the trial, or keep only the rows it needs");
  }

  @Test
  void bracketsThatOpenAndOpen() throws IOException {
    fill("a.yaml", "[", 999_999);
    assertThat(refused().saying().code()).isEqualTo("document-without-fields");
    fill("a.yaml", "a: ", 1, "[", 999_000);
    assertThat(refused().saying().code()).isEqualTo("document-too-deep");
    fill("a.yaml", "a: ", 1, "{b: ", 200_000);
    assertThat(refused().saying().code()).isEqualTo("document-too-deep");
  }

  @Test
  void moreFieldsThanADocumentHas() throws IOException {
    fill("a.yaml", "a: [", 1, "x,", 400_000);
    assertRefused(
        "a.yaml:1: a[49998]: the document has more than 50000 parts"
            + " — put readings into a table under \"readings:\" and split what is left");
  }

  @Test
  void aNumberOfAMillionDigits() throws IOException {
    fill("a.yaml", "trial: runout\nindicator: {division: ", 1, "9", 900_000);
    Files.writeString(folder.resolve("b"), "");
    Refused refused = refused();
    assertThat(refused.saying().code()).isEqualTo("yaml-bracket-open");
    fill("a.yaml", "trial: speed\nreadings: |\n  setting, speed_rpm\n  ", 1, "9", 900_000);
    assertThat(refused().saying().code()).isEqualTo("row-ragged");
  }

  @Test
  void aBinaryFile() throws IOException {
    Files.write(folder.resolve("a.yaml"), new byte[] {'P', 'K', 3, 4, 0, 0});
    assertRefused("a.yaml:1: the text holds the control character U+0003 — remove it");
    Files.write(folder.resolve("a.yaml"), new byte[] {'a', '\n', 0, 1});
    assertRefused(
        "a.yaml:2: the file is not a text: it holds U+0000"
            + " — name a text file; export a spreadsheet as CSV first");
    write("a.yaml", NAMES_CSV);
    Files.write(folder.resolve("a.csv"), new byte[] {'a', '\r', '\n', 'b', 0});
    assertThat(refused().place().line()).isEqualTo(2);
  }

  @Test
  void aTextInAnotherEncoding() throws IOException {
    String remedy =
        " — save the file anew with the encoding UTF-8; µ, ± and letters with accents depend on it";
    Files.write(
        folder.resolve("a.yaml"),
        "trial: speed\ntitle: 5 µm\n".getBytes(StandardCharsets.ISO_8859_1));
    assertRefused("a.yaml:2: the text is not in UTF-8" + remedy);
    Files.write(folder.resolve("a.yaml"), "trial: speed\n".getBytes(StandardCharsets.UTF_16));
    assertRefused("a.yaml:1: the text is not in UTF-8" + remedy);
    Files.write(folder.resolve("a.yaml"), new byte[] {'a', (byte) 0xc3});
    assertRefused("a.yaml:1: the text is not in UTF-8" + remedy);
    write("a.yaml", NAMES_CSV);
    Files.write(
        folder.resolve("a.csv"),
        "setting,speed_rpm\n1,8000±\n".getBytes(StandardCharsets.ISO_8859_1));
    assertRefused("a.csv:2: the text is not in UTF-8" + remedy);
  }

  @Test
  void marksAndLineEndsOfOtherSystemsAreRead() throws IOException {
    Trial plain = read("trial: speed\nreadings: |\n  setting, speed_rpm\n  1, 8000\n");
    Trial other =
        read("\ufefftrial: speed\r\nreadings: |\r\n  setting, speed_rpm\r\n  1, 8000\r\n");
    assertThat(other).isEqualTo(plain);
    write("a.yaml", NAMES_CSV);
    write("a.csv", "\ufeffsetting,speed_rpm\r1,8000\r\r\n2,9000\n");
    Trial old = TrialFiles.read(folder.resolve("a.yaml"), "a.yaml");
    assertThat(old.readings().orElseThrow().rows()).hasSize(2);
    assertThat(old.readings().orElseThrow().rows().get(1).place().line()).isEqualTo(4);
  }

  @Test
  void aLinkInsteadOfATable() throws IOException {
    Path outside = Files.createTempFile("outside", ".csv");
    write("a.yaml", NAMES_CSV);
    Files.createSymbolicLink(folder.resolve("a.csv"), outside);
    String line =
        "a.yaml:2: readings: \"a.csv\" is a link, or lies behind one — put the file itself beside the trial";
    assertRefused(line);
    Files.delete(folder.resolve("a.csv"));
    Files.createSymbolicLink(folder.resolve("sub"), outside.getParent());
    write("a.yaml", "trial: speed\nreadings: sub/" + outside.getFileName() + "\n");
    assertThat(refused().saying().code()).isEqualTo("file-is-link");
    Files.delete(outside);
  }

  @Test
  void aFolderOrNothingInsteadOfATrial() throws IOException {
    Files.createDirectory(folder.resolve("a.yaml"));
    assertRefused(
        "a.yaml: this is a folder, and a trial is a file — name one of the trial files in it");
    Files.delete(folder.resolve("a.yaml"));
    assertRefused(
        "a.yaml: there is no file or folder of this name"
            + " — check the name, and the folder you stand in");
  }

  @Test
  void aDeviceInsteadOfAFile() {
    Refused refused =
        catchThrowableOfType(
            Refused.class, () -> TrialFiles.read(Path.of("/dev/zero"), "/dev/zero"));
    assertThat(Sentences.refusal(refused).line())
        .isEqualTo(
            "/dev/zero: \"/dev/zero\" is not an ordinary file — save what it gives in a file first");
  }

  @Test
  void aFileThatBreaksOff() throws IOException {
    // the kernel's own page of this process has no length and refuses to be read at its start
    Refused refused =
        catchThrowableOfType(
            Refused.class, () -> TrialFiles.read(Path.of("/proc/self/mem"), "mem"));
    assertThat(refused.saying().code()).isEqualTo("file-not-read");
  }

  private Trial read(String text) throws IOException {
    write("a.yaml", text);
    return TrialFiles.read(folder.resolve("a.yaml"), "a.yaml");
  }

  private void assertRefused(String line) {
    assertThat(Sentences.refusal(refused()).line()).isEqualTo(line);
  }

  private Refused refused() {
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    Refused refused =
        catchThrowableOfType(
            Refused.class, () -> TrialFiles.read(folder.resolve("a.yaml"), "a.yaml"));
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    assertThat(Duration.ofNanos(took)).isLessThan(SOON);
    return refused;
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private void fill(String name, String piece, int times) throws IOException {
    fill(name, "", 0, piece, times);
  }

  private void fill(String name, String head, int once, String piece, int times)
      throws IOException {
    ByteArrayOutputStream chunk = new ByteArrayOutputStream();
    int whole = 1000;
    chunk.writeBytes(piece.repeat(whole).getBytes(StandardCharsets.UTF_8));
    try (OutputStream out = Files.newOutputStream(folder.resolve(name))) {
      out.write(head.repeat(once).getBytes(StandardCharsets.UTF_8));
      for (int i = 0; i < times / whole; i++) {
        chunk.writeTo(out);
      }
      out.write(piece.repeat(times % whole).getBytes(StandardCharsets.UTF_8));
    }
  }
}
