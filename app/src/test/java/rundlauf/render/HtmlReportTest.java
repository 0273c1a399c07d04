package rundlauf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rundlauf.report.BenchReport;

class HtmlReportTest {
  @Test
  void write() throws Exception {
    String html = HtmlReport.write(BenchReport.of(InventedBench.results()), new Sentences());
    Files.writeString(Path.of("/tmp/w/report.html"), html);
    assertThat(html).doesNotContain("<img src=x");
  }
}
