package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.Planning;
import rundlauf.readings.Unfinished;
import rundlauf.report.BenchResults;
import rundlauf.report.Outcome;

/**
 * What the benches in the store tell: worked out from the files they stand for by what the commands
 * work it out with, and anew only where something that it depends on has changed.
 */
public final class KeptResults {
  private static final int BENCHES = 4;
  private static final int OUTCOMES = 400;

  private final StoredBench stored;
  private final Documents documents;
  private final Work work;
  private final Memo<BenchContents, Bench> benches = new Memo<>(BENCHES);
  private final Memo<List<String>, Outcome> outcomes = new Memo<>(OUTCOMES);
  private final Memo<BenchContents, BenchResults> results = new Memo<>(BENCHES);
  private final Memo<BenchContents, List<JobOutcome>> plans = new Memo<>(BENCHES);
  private final Map<String, Run> running = new ConcurrentHashMap<>();

  public KeptResults(StoredBench stored, Documents documents, Work work) {
    this.stored = stored;
    this.documents = documents;
    this.work = work;
  }

  /** A bench with its trials, as they stand in the store now. */
  public Bench bench(String name) {
    return bench(stored.texts(name));
  }

  /** A bench as it stands in these files. */
  Bench bench(BenchContents texts) {
    return benches.get(texts, () -> documents.bench(texts));
  }

  /** What became of one trial. */
  public Outcome outcome(TrialName trial) {
    return outcome(stored.alone(trial), trial);
  }

  /** What would become of a trial if its files stood so. */
  Outcome outcome(BenchContents alone, TrialName trial) {
    Trial read = documents.trial(alone, StoredBench.path(trial.trial()));
    return outcome(alone, stored.bare(alone), read);
  }

  /** Every trial that is taken far enough reduced, and the setups compared. */
  public BenchResults results(String name) {
    return results(stored.texts(name));
  }

  private BenchResults results(BenchContents texts) {
    return results.get(
        texts,
        () -> {
          Bench bench = bench(texts);
          List<Outcome> all = work.map(bench.trials(), trial -> outcome(texts, bench, trial));
          List<Outcome> taken = all.stream().filter(KeptResults::isTaken).toList();
          return BenchOutcomes.compared(bench, taken, Draws.DEFAULT);
        });
  }

  private static boolean isTaken(Outcome outcome) {
    return !(outcome instanceof Outcome.Unusable unusable && Unfinished.is(unusable.refused()));
  }

  /**
   * The jobs of a bench, planned.
   *
   * @throws rundlauf.maths.Stopped when somebody stopped it meanwhile
   */
  public List<JobOutcome> plans(String name) {
    BenchContents texts = stored.texts(name);
    return plans.get(texts, () -> plan(name, texts));
  }

  private List<JobOutcome> plan(String name, BenchContents texts) {
    Run run = new Run(work);
    running.put(name, run);
    try {
      return new PlanBench(run).plan(results(texts), Draws.DEFAULT, Planning.STATES);
    } finally {
      running.remove(name, run);
    }
  }

  /** How far the jobs of a bench are planned; empty when nobody waits for them. */
  public Optional<Progress> planning(String name) {
    return Optional.ofNullable(running.get(name)).map(Run::progress);
  }

  /** The jobs of a bench are no longer waited for. */
  public void stopPlanning(String name) {
    Optional.ofNullable(running.get(name)).ifPresent(Run::stop);
  }

  /** Nobody waits for anything any more. */
  public void stop() {
    running.values().forEach(Run::stop);
  }

  /** A trial depends on its two files and the bench's document, and on nothing else. */
  Outcome outcome(BenchContents texts, Bench bench, Trial trial) {
    String table = StoredBench.table(trial.file().substring(BenchContents.TRIALS.length()));
    List<String> key =
        List.of(
            trial.file(),
            text(texts.find(BenchContents.DOCUMENT)),
            text(texts.find(trial.file())),
            text(texts.find(table)));
    return outcomes.get(
        key, () -> BenchOutcomes.outcome(trial, bench, Draws.DEFAULT, Work.sequential()));
  }

  private static String text(Optional<byte[]> bytes) {
    return bytes.map(b -> new String(b, StandardCharsets.UTF_8)).orElse("");
  }
}
