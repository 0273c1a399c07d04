package rundlauf.web;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.MainServing;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.store.Store;
import rundlauf.usecase.KeepContents;

/**
 * A workbook that listens on every address of this machine, with the demo bench. Tests speak to
 * nothing but this machine: whoever comes by 127.0.0.2 stands for a device outside it.
 */
final class OutsideServed implements AutoCloseable {
  static final String HERE = "127.0.0.1";
  static final String OUTSIDE = "127.0.0.2";

  private final Store store;
  private final Workbook workbook;
  private final List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
  private volatile Instant now = Instant.parse("2026-11-25T09:00:00Z");

  OutsideServed(Path folder) {
    store = Store.open(folder.resolve("workbook.db").toString(), InstantSource.system());
    new KeepContents(store.benches(), store.attachments(), new TypedDocuments())
        .keep(DemoBenchFiles.contents());
    workbook =
        Workbook.start(
            new MainServing(faults::add).cases(store),
            "0.0.0.0",
            0,
            Optional.empty(),
            () -> now,
            ctx -> !ctx.req().getLocalAddr().equals(OUTSIDE));
  }

  int port() {
    return Integer.parseInt(workbook.address().replaceAll(".*:(\\d+)/$", "$1"));
  }

  String at(String address, String path) {
    return "http://" + address + ":" + port() + path;
  }

  /** Time goes by. */
  void later(Duration time) {
    now = now.plus(time);
  }

  Asked get(String address, String path, Map<String, String> says) {
    return Asked.of(address, port(), "GET " + path, says, "");
  }

  Asked post(String address, String path, Map<String, String> says, String body) {
    return Asked.of(address, port(), "POST " + path, says, body);
  }

  /** A code that this machine's own page shows. */
  String code() {
    Asked page = get(HERE, "/devices", Map.of());
    Map<String, String> cookie = Map.of("Cookie", page.cookie());
    post(HERE, "/devices/code", cookie, "token=" + page.token());
    return get(HERE, "/devices", cookie).code();
  }

  /** What a device from outside gets for a code. */
  Asked typed(String code) {
    Asked page = get(OUTSIDE, "/let-in", Map.of());
    String body = "token=" + page.token() + "&code=" + code.replace(" ", "+");
    return post(OUTSIDE, "/let-in", Map.of("Cookie", page.cookie()), body);
  }

  List<Throwable> faults() {
    return List.copyOf(faults);
  }

  @Override
  public void close() {
    workbook.stop();
    store.close();
  }
}
