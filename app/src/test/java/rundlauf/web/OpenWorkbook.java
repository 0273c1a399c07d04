package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.util.Optional;

/** A workbook that is served for a test, and a device that has it open. */
final class OpenWorkbook implements AutoCloseable {
  private final WorkbookServed workbook;
  private final Device device;

  private OpenWorkbook(WorkbookServed workbook, Path folder) {
    this.workbook = workbook;
    this.device = Device.open(folder.resolve("device"));
  }

  /** The demo bench, which is bench 1. */
  static OpenWorkbook demo(Path folder) {
    return new OpenWorkbook(WorkbookServed.demo(folder), folder);
  }

  /** The same with every job planned, whatever that takes: no page has to wait for it. */
  static OpenWorkbook planned(Path folder) throws IOException, InterruptedException {
    OpenWorkbook open = demo(folder);
    Sender sender = new Sender(open.workbook.at(""));
    HttpRequest jobs = sender.to("/bench/1/jobs/planned", Optional.empty()).build();
    assertThat(sender.send(jobs).statusCode()).isEqualTo(200);
    return open;
  }

  static OpenWorkbook empty(Path folder) {
    return new OpenWorkbook(WorkbookServed.empty(folder), folder);
  }

  Device device() {
    return device;
  }

  WorkbookServed served() {
    return workbook;
  }

  /** Opens a page. */
  void go(String path) {
    device.go(workbook.at(path));
  }

  /** Opens a page, and waits for the pieces of it that come later. */
  void read(String path) {
    go(path);
    settle();
  }

  /** Waits for the pieces of a page that come later. */
  void settle() {
    device.await("everything", () -> device.all("[hx-trigger=load]").isEmpty());
  }

  /** Ends both; a test wants no fault of ours. */
  @Override
  public void close() {
    device.close();
    workbook.close();
    assertThat(workbook.faults()).isEmpty();
  }
}
