package rundlauf.usecase;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.guide.Guidance;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.RunoutReader;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialKind;
import rundlauf.readings.Unfinished;
import rundlauf.reduce.Reduced;
import rundlauf.report.Outcome;

/**
 * A trial that is being taken.
 *
 * @param begun when its first edition was kept
 * @param version rises with everything that is added to the trial
 * @param bench without its trials
 * @param document its newest edition
 * @param readings all, also those that were struck out
 * @param outcome what they tell
 * @param earlier what their beginning tells, where the whole tells nothing yet
 * @param guidance what comes next
 * @param standing what must be said of the spindle
 */
public record SheetState(
    Instant begun,
    int version,
    Bench bench,
    Trial trial,
    Entry.Fields document,
    List<Kept.Reading> readings,
    List<Kept.Attachment> attachments,
    Outcome outcome,
    Optional<Earlier> earlier,
    Guidance guidance,
    List<Saying> standing) {
  public SheetState {
    readings = List.copyOf(readings);
    attachments = List.copyOf(attachments);
    standing = List.copyOf(standing);
  }

  /** What the first {@code count} readings tell. */
  public record Earlier(int count, Reduced reduced) {}

  /** The turn that is being read, where the readings bear no figure yet and further ones may. */
  public Optional<RunoutReadings.Sweep> turnBegun() {
    if (!(outcome instanceof Outcome.Unusable unusable)
        || !Unfinished.is(unusable.refused())
        || TrialKind.of(trial) != TrialKind.RUNOUT) {
      return Optional.empty();
    }
    try {
      return RunoutReader.begun(trial, Optional.of(bench));
    } catch (Refused another) { // the first thing to mend is said already
      return Optional.empty();
    }
  }

  /** The last reading that is not struck out. */
  public Optional<Kept.Reading> last() {
    return readings.stream().filter(r -> r.struck().isEmpty()).reduce((a, b) -> b);
  }
}
