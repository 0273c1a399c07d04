package rundlauf.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import rundlauf.bench.Bench;
import rundlauf.bench.EntryTexts;
import rundlauf.bench.Setup;
import rundlauf.bench.Trial;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.report.Outcome;
import rundlauf.safety.Inspection;
import rundlauf.safety.Standing;

/** Whether the spindles of a bench in the store may be powered, by their inspections. */
public final class SpindleStanding {
  private static final int TRIALS = 400;

  private final BenchStore benches;
  private final StoredBench stored;
  private final Documents documents;
  private final KeptResults results;
  private final Memo<String, String> kinds = new Memo<>(TRIALS);

  public SpindleStanding(
      BenchStore benches, StoredBench stored, Documents documents, KeptResults results) {
    this.benches = benches;
    this.stored = stored;
    this.documents = documents;
    this.results = results;
  }

  /** How each spindle stands now, by its name. */
  public Map<String, Standing> of(String bench) {
    Bench bare = stored.bare(bench);
    List<Inspection> all = inspections(bench);
    Map<String, Standing> standing = new LinkedHashMap<>();
    bare.spindles().forEach(s -> standing.put(s.name(), of(bare, s.name(), all)));
    return standing;
  }

  private static Standing of(Bench bare, String spindle, List<Inspection> inspections) {
    return Standing.of(Hold.ofSpindle(bare, spindle, inspections));
  }

  /**
   * What must be said beside a trial of a setup. That nobody looked the spindle over matters where
   * it is powered; that it is held matters everywhere, save in an inspection, which says so itself.
   *
   * @param setup as typed; nothing is said where the bench has none of that name
   */
  public List<Saying> cautions(String bench, String setup, TrialKind kind) {
    return cautions(bench, setup, Optional.of(kind));
  }

  private List<Saying> cautions(String bench, String setup, Optional<TrialKind> kind) {
    Bench bare = stored.bare(bench);
    Optional<String> spindle = bare.setup(setup.strip()).map(Setup::spindle);
    if (spindle.isEmpty() || kind.equals(Optional.of(TrialKind.INSPECTION))) {
      return List.of();
    }
    Standing standing = of(bare, spindle.get(), inspections(bench));
    boolean counts = standing == Standing.HELD || kind.filter(TrialKind::isPowered).isPresent();
    return counts ? standing.cautions(spindle.get()) : List.of();
  }

  /** The same of a trial by what its document says; it may be of a kind that is not reduced yet. */
  public List<Saying> ofTrial(String bench, Trial trial) {
    String setup = EntryTexts.at(trial.document(), "setup");
    return cautions(bench, setup, TrialKind.ofWord(trial.kind().strip()));
  }

  /** In the order of the files that an export writes. */
  private List<Inspection> inspections(String bench) {
    List<Inspection> all = new ArrayList<>();
    for (String trial : new TreeSet<>(benches.trials(bench))) {
      var name = new TrialName(bench, trial);
      if (isInspection(name)
          && results.outcome(name) instanceof Outcome.Figures figures
          && figures.reduced() instanceof Inspection inspection) {
        all.add(inspection);
      }
    }
    return all;
  }

  /** Whether a trial is one of those by which spindles stand as they do. */
  public boolean isInspection(TrialName trial) {
    return kind(trial).equals(TrialKind.INSPECTION.word());
  }

  private String kind(TrialName trial) {
    String text = stored.document(trial);
    String path = StoredBench.path(trial.trial());
    return kinds.get(text, () -> EntryTexts.at(documents.read(text, path), "trial").strip());
  }
}
