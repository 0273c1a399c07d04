package rundlauf.usecase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.guide.Guide;
import rundlauf.guide.Step;

/** Begins a trial: what is known of it before the first reading is taken. */
public final class StartTrial {
  private final BenchStore benches;
  private final StoredBench stored;
  private final Documents documents;
  private final TrialHeads heads;

  public StartTrial(
      BenchStore benches, StoredBench stored, Documents documents, KeptResults results) {
    this.benches = benches;
    this.stored = stored;
    this.documents = documents;
    this.heads = new TrialHeads(results);
  }

  /**
   * Keeps a trial without readings.
   *
   * @param bench its name
   * @param kind of the trial
   * @param typed the fields of the form by their paths, empty ones left out of the document
   * @return the trial
   * @throws rundlauf.quantity.Refused when a field cannot be read or lacks
   */
  public TrialName start(String bench, String kind, Map<String, String> typed) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("trial", kind);
    fields.putAll(typed);
    Entry.Fields document = TypedFields.into(Entry.Fields.none(), fields);
    TrialName name = free(bench, slug(typed.getOrDefault("setup", "")) + "-" + slug(kind));
    String text = documents.write(document);
    BenchContents without = stored.alone(name, text, List.of());
    Optional<Step> first =
        Guide.next(documents.trial(without, StoredBench.path(name.trial())), Optional.empty())
            .step();
    heads.look(stored.alone(name, text, first.map(TrialHeads::asked).stream().toList()), name);
    benches.keepTrial(name, text);
    return name;
  }

  /** Later ones sort behind earlier ones: of two inspections of a day the later one counts. */
  private TrialName free(String bench, String wanted) {
    List<String> taken = benches.trials(bench);
    String name = wanted + ".yaml";
    for (int i = 2; taken.contains(name); i++) {
      name = String.format(Locale.ROOT, "%s_%03d.yaml", wanted, i);
    }
    return new TrialName(bench, name);
  }

  /** Letters, digits and hyphens: a file's name on every system. */
  private static String slug(String text) {
    String plain =
        java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return plain.isEmpty() ? "trial" : plain.substring(0, Math.min(60, plain.length()));
  }
}
