package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import rundlauf.bench.Entry;

/** Takes a part off a bench, where nothing names it; older editions keep it. */
public final class RemovePart {
  private final BenchDocument document;
  private final PartUses uses;

  public RemovePart(BenchStore benches, StoredBench stored, Documents documents) {
    this.document = new BenchDocument(benches, stored, documents);
    this.uses = new PartUses(stored, documents);
  }

  /**
   * Takes a part away.
   *
   * @param edition of the bench's document that was seen
   * @param number of the part in its section, from 1
   * @throws rundlauf.quantity.Refused when something names it
   */
  public void remove(String bench, int edition, String section, int number) {
    Entry.Fields whole = document.read(bench, edition);
    List<Entry> parts = new ArrayList<>(BenchDocument.parts(whole, section));
    Entry.Fields was = PutPart.at(parts, number);
    uses.refuse(bench, whole, section, PartUses.name(was), "part-used");
    parts.remove(number - 1);
    document.keep(bench, BenchDocument.with(whole, section, parts));
  }
}
