package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * Puts a part on a bench, new or in place of what it was: a new edition of the bench's document.
 */
public final class PutPart {
  private final BenchDocument document;
  private final PartUses uses;

  public PutPart(BenchStore benches, StoredBench stored, Documents documents) {
    this.document = new BenchDocument(benches, stored, documents);
    this.uses = new PartUses(stored, documents);
  }

  /**
   * Keeps a part.
   *
   * @param edition of the bench's document that its form was filled from
   * @param section such as {@code spindles}
   * @param number of the part in it from 1; 0: a new one
   * @param typed its fields by their paths; an empty text takes its field away
   * @return the number of the part
   * @throws Refused for whatever is not as it should be; then nothing is kept
   */
  public int put(String bench, int edition, String section, int number, Map<String, String> typed) {
    Entry.Fields whole = document.read(bench, edition);
    List<Entry> parts = new ArrayList<>(BenchDocument.parts(whole, section));
    refuseTwice(typed);
    if (number == 0) {
      parts.add(TypedFields.into(Entry.Fields.none(), TypedFields.given(typed)));
    } else {
      Entry.Fields was = at(parts, number);
      Entry.Fields now = TypedFields.into(was, TypedFields.changed(was, typed));
      if (!PartUses.name(now).equals(PartUses.name(was))) {
        uses.refuse(bench, whole, section, PartUses.name(was), "part-name-used");
      }
      parts.set(number - 1, now);
    }
    document.keep(bench, BenchDocument.with(whole, section, parts));
    return number == 0 ? parts.size() : number;
  }

  static Entry.Fields at(List<Entry> parts, int number) {
    if (number < 1 || number > parts.size() || !(parts.get(number - 1) instanceof Entry.Fields)) {
      throw Refused.at(Place.NOWHERE, "part-not-there");
    }
    return (Entry.Fields) parts.get(number - 1);
  }

  /** A field is either one text or has fields of its own. */
  private static void refuseTwice(Map<String, String> typed) {
    typed.forEach(
        (path, text) -> {
          int dot = path.indexOf('.');
          String above = dot < 0 ? "" : path.substring(0, dot);
          if (dot >= 0 && !text.isBlank() && !typed.getOrDefault(above, "").isBlank()) {
            throw Refused.at(Place.NOWHERE.field(above), "field-said-twice", Arg.of(path));
          }
        });
  }
}
