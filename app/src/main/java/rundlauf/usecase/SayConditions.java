package rundlauf.usecase;

import java.util.Map;

/** Says under which conditions a trial is taken; what was said before stays as an older edition. */
public final class SayConditions {
  private final BenchStore benches;
  private final StoredBench stored;
  private final Documents documents;
  private final TrialHeads heads;

  public SayConditions(
      BenchStore benches, StoredBench stored, Documents documents, KeptResults results) {
    this.benches = benches;
    this.stored = stored;
    this.documents = documents;
    this.heads = new TrialHeads(results);
  }

  /**
   * Keeps a new edition of a trial's document.
   *
   * @param typed fields by their paths; an empty text takes its field away
   * @throws rundlauf.quantity.Refused when a field cannot be read
   */
  public Kept.Edition say(TrialName trial, Map<String, String> typed) {
    String path = StoredBench.path(trial.trial());
    String text =
        documents.write(TypedFields.into(documents.read(stored.document(trial), path), typed));
    heads.look(stored.alone(trial, text, benches.readings(trial)), trial);
    return benches.keepTrial(trial, text);
  }
}
