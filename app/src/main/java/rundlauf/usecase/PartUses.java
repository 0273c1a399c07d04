package rundlauf.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Who names a part of a bench. */
final class PartUses {
  /** By section: the field of setups and jobs, and that of trials, which name its parts. */
  private static final Map<String, List<String>> FIELDS = fields();

  private final StoredBench stored;
  private final Documents documents;

  PartUses(StoredBench stored, Documents documents) {
    this.stored = stored;
    this.documents = documents;
  }

  private static Map<String, List<String>> fields() {
    Map<String, List<String>> fields = new LinkedHashMap<>();
    fields.put("spindles", List.of("spindle"));
    fields.put("holders", List.of("holder"));
    fields.put("cutters", List.of("cutter"));
    fields.put("indicators", List.of("indicator"));
    fields.put("rigs", List.of("load"));
    fields.put("materials", List.of("material"));
    fields.put("setups", List.of("setup"));
    return fields;
  }

  /** The name of a part; empty text where it has none. */
  static String name(Entry.Fields part) {
    return EntryTexts.at(part, "name").strip();
  }

  /** Refuses when a trial, or what stands on the bench then, names a part that is there no more. */
  void refuseGone(String bench, Entry.Fields now, Entry.Fields then) {
    for (String section : FIELDS.keySet()) {
      List<String> left = names(then, section);
      for (String name : names(now, section)) {
        if (!left.contains(name)) {
          refuse(bench, then, section, name, "part-used");
        }
      }
    }
  }

  private static List<String> names(Entry.Fields document, String section) {
    return BenchDocument.parts(document, section).stream()
        .map(part -> part instanceof Entry.Fields fields ? name(fields) : "")
        .toList();
  }

  /** Refuses when anything on the bench names this part. */
  void refuse(String bench, Entry.Fields whole, String section, String name, String code) {
    List<String> fields = FIELDS.getOrDefault(section, List.of());
    List<String> users = new ArrayList<>();
    for (String naming : List.of("setups", "jobs")) {
      for (Entry part : BenchDocument.parts(whole, naming)) {
        if (part instanceof Entry.Fields fieldsOf && names(fieldsOf, fields, name)) {
          users.add(name(fieldsOf));
        }
      }
    }
    for (Trial trial : documents.bench(stored.texts(bench)).trials()) {
      if (names(trial.document(), fields, name)) {
        users.add(trial.name());
      }
    }
    if (!users.isEmpty()) {
      throw Refused.at(
          Place.NOWHERE.field("name"), code, Arg.typed(name), Arg.of(String.join(", ", users)));
    }
  }

  private static boolean names(Entry.Fields user, List<String> fields, String name) {
    return fields.stream().flatMap(f -> user.get(f).stream()).anyMatch(e -> says(e, name));
  }

  private static boolean says(Entry entry, String name) {
    if (entry instanceof Entry.Scalar scalar) {
      return scalar.text().strip().equals(name);
    }
    if (entry instanceof Entry.Items items) {
      return items.items().stream().anyMatch(e -> says(e, name));
    }
    return name((Entry.Fields) entry).equals(name);
  }
}
