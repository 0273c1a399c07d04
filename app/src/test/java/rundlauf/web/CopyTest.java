package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.store.Store;

/** The whole store copied beside itself by a button of the workbook. */
class CopyTest {
  @TempDir private Path folder;

  @Test
  void holdsEverythingThatIsKept() throws Exception {
    try (WorkbookServed workbook = WorkbookServed.demo(folder)) {
      Sender sender = new Sender(workbook.at(""));
      var request =
          sender
              .to("/bench/1/copy", Optional.of(sender.token()))
              .POST(BodyPublishers.noBody())
              .build();
      String page = sender.send(request).body();
      String copy = page.replaceFirst("(?s).*The copy lies in</b> <span class=\"typed\">", "");
      String path = copy.replaceFirst("(?s)<.*", "");
      assertThat(Path.of(path)).exists().hasParent(folder);
      try (Store first = Store.open(workbook.store(), InstantSource.system());
          Store second = Store.open(path, InstantSource.system())) {
        assertThat(second.benches().benches()).isEqualTo(first.benches().benches()).hasSize(1);
        String bench = first.benches().benches().get(0);
        assertThat(second.benches().trials(bench)).isEqualTo(first.benches().trials(bench));
      }
    }
  }
}
