package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Main;
import rundlauf.store.Store;
import rundlauf.usecase.TrialName;

/**
 * A sheet of a workbook whose disk is full: every write of the store's log is answered so by the
 * system ({@code strace}) until there is room.
 */
class SheetOnFullDiskTest {
  private static final TrialName TRIAL = new TrialName("The inlay corner", "sheet.yaml");
  private static final String FULL = "the disk of the store is full, and this is not kept";

  @TempDir private Path folder;
  private final List<ProcessHandle> left = new ArrayList<>();

  @Test
  void keepsWhatIsTypedSaysWhyAndGoesOnWhenThereIsRoom() throws Exception {
    String file = folder.resolve("workbook.db").toString();
    begin(file);
    Process full = onFullDisk(file);
    try (Device phone = opened(full)) {
      OpenSheet sheet = OpenSheet.on(phone);
      sheet.read("10");
      sheet.read("20");
      phone.await("why", () -> phone.text("#banner").contains(FULL + "; make room on it"));
      assertThat(phone.text("#banner")).contains("Type on: readings on this device: 2.");
      assertThat(sheet.kept()).isZero();
      assertThat(phone.find("#refused").isDisplayed()).isFalse();
      assertRefused(phone.address());
      full.destroyForcibly().waitFor(); // the tracer alone: the workbook goes on, with room
      sheet.settled(2);
      phone.await("no trouble", () -> !sheet.away());
      sheet.read("10");
      sheet.settled(3);
    } finally {
      full.destroyForcibly();
      for (ProcessHandle workbook : left) {
        workbook.destroy();
        workbook.onExit().get();
      }
    }
    assertKept(file, "10", "20", "10");
  }

  private static void begin(String file) {
    try (Store store = Store.open(file, InstantSource.system())) {
      store.benches().keepBench(TRIAL.bench(), "bench: " + TRIAL.bench() + "\n");
      store
          .benches()
          .keepTrial(
              TRIAL, "trial: runout\nindicator: {division: 0.01 mm}\ngauge: {diameter: 3 mm}\n");
    }
  }

  private Device opened(Process full) throws IOException {
    BufferedReader said = full.inputReader();
    String address = said.readLine().replaceFirst(".*(http://[^ ]+)/ .*", "$1");
    full.toHandle().children().forEach(left::add);
    Device phone = Device.open(folder.resolve("phone"));
    phone.go(address + "/bench/1/trial/1/sheet");
    return phone;
  }

  private static Process onFullDisk(String file) throws IOException {
    List<String> command = new ArrayList<>(List.of("strace", "-f", "-qq", "-o", "/dev/null"));
    command.addAll(List.of("-e", "trace=pwrite64", "-e", "inject=pwrite64:error=ENOSPC"));
    command.addAll(List.of("-P", file + "-wal"));
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp"));
    command.addAll(List.of(System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(List.of("serve", "--store", file, "--port", "0"));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  /** What is sent past the sheet is answered so, too; a page as a page. */
  private static void assertRefused(String sheet) throws Exception {
    Sender sender = new Sender(sheet.replaceFirst("/bench/.*", ""));
    HttpResponse<String> answer = sender.reading("/bench/1/trial/1", "other", "90", "10");
    assertThat(answer.statusCode()).isEqualTo(503);
    assertThat(answer.body())
        .contains("\"code\":\"store-disk-full\"", "\"text\":\"" + FULL + "\"")
        .doesNotContain("SQLITE", "Exception");
    var page =
        sender.send(
            sender
                .to("/bench/1/trial/1/conditions", Optional.of(sender.token()))
                .setHeader("Accept", "text/html")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString("title=Later"))
                .build());
    assertThat(page.statusCode()).isEqualTo(503);
    assertThat(page.body()).containsIgnoringCase(FULL).doesNotContain("SQLITE", "Exception");
  }

  private static void assertKept(String file, String... readings) {
    try (Store store = Store.open(file, InstantSource.system())) {
      assertThat(store.benches().readings(TRIAL))
          .extracting(r -> r.typed().cells().stream().map(c -> c.text()).toList())
          .hasSize(readings.length)
          .zipSatisfy(List.of(readings), (cells, typed) -> assertThat(cells).contains(typed));
    }
  }
}
