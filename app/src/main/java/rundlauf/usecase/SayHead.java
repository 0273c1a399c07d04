package rundlauf.usecase;

import java.util.Map;
import rundlauf.bench.Entry;

/** Says what a bench is as a whole: its notes, and how fast its axes go. */
public final class SayHead {
  private final BenchDocument document;

  public SayHead(BenchStore benches, StoredBench stored, Documents documents) {
    this.document = new BenchDocument(benches, stored, documents);
  }

  /**
   * Keeps a new edition.
   *
   * @param edition of the bench's document that was seen
   * @param typed fields by their paths; an empty text takes its field away
   * @throws rundlauf.quantity.Refused when a field cannot be read
   */
  public Kept.Edition say(String bench, int edition, Map<String, String> typed) {
    Entry.Fields whole = document.read(bench, edition);
    return document.keep(bench, TypedFields.into(whole, TypedFields.changed(whole, typed)));
  }
}
