package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.List;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** The document of a bench in the store, changed as a whole and read before it is kept. */
final class BenchDocument {
  private final BenchStore benches;
  private final StoredBench stored;
  private final Documents documents;

  BenchDocument(BenchStore benches, StoredBench stored, Documents documents) {
    this.benches = benches;
    this.stored = stored;
    this.documents = documents;
  }

  /** The newest edition of a bench. */
  Kept.Edition newest(String bench) {
    return benches
        .bench(bench)
        .orElseThrow(() -> Refused.at(Place.NOWHERE, "bench-not-there", Arg.typed(bench)));
  }

  /**
   * The document of the newest edition.
   *
   * @param edition that whoever changes it has seen
   * @throws Refused when there is a newer one
   */
  Entry.Fields read(String bench, int edition) {
    Kept.Edition newest = newest(bench);
    if (newest.number() != edition) {
      throw Refused.at(Place.NOWHERE, "edition-newer", Arg.of(newest.number()), Arg.of(edition));
    }
    return documents.read(newest.document(), BenchContents.DOCUMENT);
  }

  /** The parts of a section. */
  static List<Entry> parts(Entry.Fields document, String section) {
    return document.get(section).orElse(null) instanceof Entry.Items items
        ? items.items()
        : List.of();
  }

  /** The document with other parts in a section. */
  static Entry.Fields with(Entry.Fields document, String section, List<Entry> parts) {
    return document.with(section, new Entry.Items(parts, Place.NOWHERE));
  }

  /**
   * Keeps a document once the whole of it can be read.
   *
   * @throws Refused for whatever is not as it should be in it
   */
  Kept.Edition keep(String bench, Entry.Fields document) {
    return keep(bench, documents.write(document));
  }

  Kept.Edition keep(String bench, String document) {
    BenchContents then =
        stored.texts(bench).with(BenchContents.DOCUMENT, document.getBytes(StandardCharsets.UTF_8));
    documents.bench(then);
    return benches.keepBench(bench, document);
  }
}
