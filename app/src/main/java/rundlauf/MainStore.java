package rundlauf;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.cli.CommandLines;
import rundlauf.devices.Processors;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.DiskContents;
import rundlauf.files.JsonPackage;
import rundlauf.files.TypedDocuments;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.store.Store;
import rundlauf.store.StoreCopy;
import rundlauf.store.UserStore;
import rundlauf.usecase.BenchPackage;
import rundlauf.usecase.ExportBench;
import rundlauf.usecase.KeepContents;
import rundlauf.usecase.Kept;
import rundlauf.usecase.StoredBench;

/** What the commands do with a store, and with packages. */
final class MainStore {
  private static final DiskContents DISK = new DiskContents();

  private MainStore() {}

  /** Opens a store; the user's own when none is named. */
  static Store open(Optional<String> address) {
    return Store.open(address.orElseGet(UserStore::address), InstantSource.system());
  }

  static JsonPackage written() {
    return new JsonPackage(CommandLines.VERSION, Sentences::text, new Wording()::column);
  }

  static BenchPackage packages() {
    return new BenchPackage(new TypedDocuments(), written(), new Processors());
  }

  /** Copies a store into a file. */
  static Kept.Copy backUp(Optional<String> address, String out) {
    return StoreCopy.make(address.orElseGet(UserStore::address), out, InstantSource.system());
  }

  /** Takes a package into a store. */
  static KeepContents.Imported take(Optional<String> address, String place) {
    var contents = DISK.contents(place);
    return with(address, store -> keep(store).keep(contents));
  }

  /** Takes the demo bench into a store of its own in a folder; gives its address. */
  static String demo(String folder) {
    String address = Path.of(folder).resolve("workbook.db").toString();
    with(Optional.of(address), store -> keep(store).keep(DemoBenchFiles.contents()));
    return address;
  }

  static KeepContents keep(Store store) {
    return new KeepContents(store.benches(), store.attachments(), new TypedDocuments());
  }

  /** Writes a bench's package into a folder. */
  static ExportBench.Exported give(
      Optional<String> address, Optional<String> bench, String folder) {
    return with(address, store -> export(store).export(bench, folder));
  }

  static ExportBench export(Store store) {
    var stored = new StoredBench(store.benches(), store.attachments(), new TypedDocuments());
    return new ExportBench(store.benches(), stored, packages(), DISK);
  }

  private static <T> T with(Optional<String> address, Function<Store, T> use) {
    try (Store store = open(address)) {
      return use.apply(store);
    }
  }
}
