package rundlauf.usecase;

import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.report.Outcome;

/** Shows a trial with its figures and everything that was ever typed for it. */
public final class ShowTrial {
  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final KeptResults results;

  public ShowTrial(BenchStore benches, AttachmentStore attachments, KeptResults results) {
    this.benches = benches;
    this.attachments = attachments;
    this.results = results;
  }

  /**
   * A trial.
   *
   * @param editions of its document, the oldest first
   * @param readings all, also those that were struck out
   */
  public record Shown(
      Bench bench,
      Outcome outcome,
      List<Kept.Edition> editions,
      List<Kept.Reading> readings,
      List<Kept.Attachment> attachments) {
    public Shown {
      editions = List.copyOf(editions);
      readings = List.copyOf(readings);
      attachments = List.copyOf(attachments);
    }
  }

  /**
   * The trial as it stands now.
   *
   * @throws rundlauf.quantity.Refused when its bench cannot be read
   */
  public Shown show(TrialName trial) {
    return new Shown(
        results.bench(trial.bench()),
        results.outcome(trial),
        benches.editions(trial),
        benches.readings(trial),
        attachments.attachments(trial));
  }

  /** The content of a recording or photo. */
  public byte[] content(Kept.Attachment attachment) {
    return attachments.content(attachment.digest());
  }
}
