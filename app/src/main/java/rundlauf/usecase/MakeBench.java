package rundlauf.usecase;

import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Begins a bench on which nothing stands yet. */
public final class MakeBench {
  private final BenchStore benches;
  private final Documents documents;

  public MakeBench(BenchStore benches, Documents documents) {
    this.benches = benches;
    this.documents = documents;
  }

  /**
   * Keeps a bench of this name.
   *
   * @return its number on the shelf
   * @throws Refused when the name is empty, too long or taken
   */
  public int make(String typed) {
    String name = typed.strip();
    if (benches.benches().contains(name)) {
      throw Refused.at(Place.NOWHERE.field("bench"), "bench-name-taken", Arg.typed(name));
    }
    Entry.Fields document = Entry.Fields.none().with("bench", Entry.Scalar.of(name));
    benches.keepBench(name, documents.write(document));
    return benches.benches().indexOf(name) + 1;
  }
}
