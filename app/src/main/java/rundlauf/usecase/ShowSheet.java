package rundlauf.usecase;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.guide.Guidance;
import rundlauf.guide.Guide;
import rundlauf.readings.Unfinished;
import rundlauf.reduce.Reduced;
import rundlauf.report.Outcome;

/** Shows a trial that is being taken: what it tells so far, and what comes next. */
public final class ShowSheet {
  /** Our choice: a sweep that was begun has fewer readings before it bears figures. */
  private static final int MOST_BACK = 16;

  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final StoredBench stored;
  private final Documents documents;
  private final KeptResults results;
  private final SpindleStanding standing;

  public ShowSheet(
      BenchStore benches,
      AttachmentStore attachments,
      StoredBench stored,
      Documents documents,
      KeptResults results,
      SpindleStanding standing) {
    this.benches = benches;
    this.attachments = attachments;
    this.stored = stored;
    this.documents = documents;
    this.results = results;
    this.standing = standing;
  }

  /**
   * The sheet as it stands now.
   *
   * @throws rundlauf.quantity.Refused when the trial is not kept, or its bench cannot be read
   */
  public SheetState show(TrialName name) {
    List<Kept.Edition> editions = benches.editions(name);
    List<Kept.Reading> readings = benches.readings(name);
    List<Kept.Attachment> attached = attachments.attachments(name);
    String document = StoredBench.newest(name, editions);
    BenchContents alone = stored.alone(name, document, readings); // all of it of one moment
    Bench bench = stored.bare(alone);
    Trial trial = documents.trial(alone, StoredBench.path(name.trial()));
    Outcome outcome = results.outcome(alone, bench, trial);
    Optional<SheetState.Earlier> earlier = earlier(name, document, readings, outcome);
    Optional<Reduced> soFar =
        outcome instanceof Outcome.Figures figures
            ? Optional.of(figures.reduced())
            : earlier.map(SheetState.Earlier::reduced);
    Guidance guidance = Guide.next(trial, soFar);
    return new SheetState(
        editions.get(0).at(),
        version(editions, readings, attached),
        bench,
        trial,
        trial.document(),
        readings,
        attached,
        outcome,
        earlier,
        guidance,
        standing.ofTrial(name.bench(), trial));
  }

  /** Rises with everything that is added to a trial. */
  public int version(TrialName name) {
    return version(benches.editions(name), benches.readings(name), attachments.attachments(name));
  }

  /** The longest beginning of the readings that bears figures, where the whole does not yet. */
  private Optional<SheetState.Earlier> earlier(
      TrialName name, String document, List<Kept.Reading> readings, Outcome outcome) {
    if (!(outcome instanceof Outcome.Unusable unusable) || !Unfinished.is(unusable.refused())) {
      return Optional.empty();
    }
    for (int count = readings.size() - 1;
        count > 0 && count >= readings.size() - MOST_BACK;
        count--) {
      BenchContents then = stored.alone(name, document, readings.subList(0, count));
      if (results.outcome(then, name) instanceof Outcome.Figures figures) {
        return Optional.of(new SheetState.Earlier(count, figures.reduced()));
      }
    }
    return Optional.empty();
  }

  /** What is kept is only added to, so counting it tells which of two states is the later one. */
  private static int version(
      List<Kept.Edition> editions, List<Kept.Reading> readings, List<Kept.Attachment> attached) {
    long struck = readings.stream().filter(r -> r.struck().isPresent()).count();
    return editions.size() + readings.size() + (int) struck + attached.size();
  }
}
