package rundlauf.usecase;

import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.report.Outcome;

/** Shows a trial with its figures and everything that was ever typed for it. */
public final class ShowTrial {
  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final StoredBench stored;
  private final KeptResults results;

  public ShowTrial(
      BenchStore benches, AttachmentStore attachments, StoredBench stored, KeptResults results) {
    this.benches = benches;
    this.attachments = attachments;
    this.stored = stored;
    this.results = results;
  }

  /**
   * A trial.
   *
   * @param bench without its trials
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
    List<Kept.Edition> editions = benches.editions(trial);
    List<Kept.Reading> readings = benches.readings(trial);
    String document = StoredBench.newest(trial, editions);
    BenchContents alone = stored.alone(trial, document, readings); // all of it of one moment
    return new Shown(
        stored.bare(alone),
        results.outcome(alone, trial),
        editions,
        readings,
        attachments.attachments(trial));
  }

  /** Its recordings and photos. */
  public List<Kept.Attachment> attachments(TrialName trial) {
    return attachments.attachments(trial);
  }

  /** The content of a recording or photo. */
  public byte[] content(Kept.Attachment attachment) {
    return attachments.content(attachment.digest());
  }
}
