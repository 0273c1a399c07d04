package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever waits for the jobs sees how far they are, and need not wait to the end. */
class PlanningInBrowserTest {
  @TempDir private Path folder;

  @Test
  void planningShowsHowFarItIsAndIsStopped() {
    try (WorkbookServed workbook = WorkbookServed.demo(folder);
        Device device = Device.open(folder.resolve("device"))) {
      device.sized(Device.PHONE, false);
      device.go(workbook.at("/bench/1/jobs"));
      device.await("progress", () -> device.text("main").contains("of 48 pairs of job and setup"));
      assertThat(device.accessibilityFaults()).isEmpty();
      assertThat(device.fits()).isTrue();
      device.press("button[hx-post]");
      device.await("its end", () -> device.text("main").contains("Stopped before every job"));
      assertThat(device.accessibilityFaults()).isEmpty();
      device.press(".remarks a");
      device.await("another run", () -> device.text("main").contains("pairs of job and setup"));
      device.press("button[hx-post]");
      device.await("its end", () -> device.text("main").contains("Stopped before every job"));
      assertThat(device.console()).isEmpty();
      assertThat(workbook.faults()).isEmpty();
    }
  }
}
