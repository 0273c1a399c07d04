package rundlauf.web;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rundlauf.MainServing;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.store.Store;
import rundlauf.usecase.KeepContents;
import rundlauf.usecase.Serving;

/** A workbook served for a test, on a store of its own. */
public final class WorkbookServed implements AutoCloseable {
  private final String store;
  private final List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
  private Serving.Running running;

  private WorkbookServed(String store, int port) {
    this.store = store;
    this.running = serve(port);
  }

  /** An empty store in a folder. */
  public static WorkbookServed empty(Path folder) {
    return new WorkbookServed(folder.resolve("workbook.db").toString(), 0);
  }

  /** The demo bench, which is bench 1. */
  public static WorkbookServed demo(Path folder) {
    String address = folder.resolve("workbook.db").toString();
    try (Store store = Store.open(address, InstantSource.system())) {
      new KeepContents(store.benches(), store.attachments(), new TypedDocuments())
          .keep(DemoBenchFiles.contents());
    }
    return new WorkbookServed(address, 0);
  }

  private Serving.Running serve(int port) {
    var call = new Serving.Call(Optional.of(store), "127.0.0.1", port, false);
    return new MainServing(faults::add).serve(call);
  }

  /** Where a page is. */
  public String at(String path) {
    return running.address().replaceFirst("/$", "") + path;
  }

  /** The store's file. */
  public String store() {
    return store;
  }

  /** Faults of ours so far: a test wants none. */
  public List<Throwable> faults() {
    return List.copyOf(faults);
  }

  /** Ends it, and gives what serves it again at the same address. */
  public Runnable stopped() {
    int port = Integer.parseInt(running.address().replaceAll(".*:(\\d+)/$", "$1"));
    running.stop().run();
    return () -> running = serve(port);
  }

  @Override
  public void close() {
    running.stop().run();
  }
}
