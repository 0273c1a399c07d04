package rundlauf.usecase;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.guide.Guidance;
import rundlauf.guide.Guide;
import rundlauf.report.Outcome;

/** Shows a trial that is being taken: what it tells so far, and what comes next. */
public final class ShowSheet {
  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final KeptResults results;

  public ShowSheet(BenchStore benches, AttachmentStore attachments, KeptResults results) {
    this.benches = benches;
    this.attachments = attachments;
    this.results = results;
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
    Bench bench = results.bench(name.bench());
    Trial trial = KeptResults.find(bench, name);
    Outcome outcome = results.outcome(name);
    Guidance guidance =
        Guide.next(
            trial,
            Optional.of(bench),
            outcome instanceof Outcome.Figures f ? Optional.of(f.reduced()) : Optional.empty());
    return new SheetState(
        editions.get(0).at(),
        version(editions, readings, attached),
        bench,
        trial,
        trial.document(),
        readings,
        attached,
        outcome,
        guidance,
        StepsAhead.of(trial, bench, guidance));
  }

  /** What is kept is only added to, so counting it tells which of two states is the later one. */
  private static int version(
      List<Kept.Edition> editions, List<Kept.Reading> readings, List<Kept.Attachment> attached) {
    long struck = readings.stream().filter(r -> r.struck().isPresent()).count();
    return editions.size() + readings.size() + (int) struck + attached.size();
  }
}
