package rundlauf.usecase;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Refused;
import rundlauf.readings.Unfinished;

/**
 * Takes a reading into a trial. It is looked at first as it would stand in the trial's file, so
 * that what no reduction could read is refused while the dial still shows it.
 */
public final class TakeReading {
  private final BenchStore benches;
  private final StoredBench stored;
  private final InstantSource clock;

  /**
   * @param clock tells the time of a strike that was made only to look what would follow
   */
  public TakeReading(BenchStore benches, StoredBench stored, InstantSource clock) {
    this.benches = benches;
    this.stored = stored;
    this.clock = clock;
  }

  /**
   * Keeps a reading.
   *
   * @param typed blanks round a cell's text are left out; empty cells are
   * @return the reading as it is kept: once it is returned it outlives any crash
   * @throws Refused when a cell cannot be read, or the key is taken by another reading
   */
  public Kept.Reading take(TrialName trial, TypedReading typed) {
    TypedReading reading = CellText.checked(typed);
    List<Kept.Reading> kept = benches.readings(trial);
    boolean again = kept.stream().anyMatch(r -> r.typed().key().equals(reading.key()));
    if (!again) {
      look(trial, kept, reading);
    }
    return benches.append(trial, reading);
  }

  /** Refuses a reading that no reduction could read, or that makes a whole trial unreadable. */
  private void look(TrialName trial, List<Kept.Reading> kept, TypedReading reading) {
    List<Kept.Reading> with = new ArrayList<>(kept);
    with.add(new Kept.Reading(kept.size() + 1, reading, clock.instant(), Optional.empty()));
    try {
      stored.read(trial, with);
    } catch (Refused refused) {
      boolean ofIt =
          refused.place().file().equals(StoredBench.table(trial.trial()))
              && refused.place().line() == with.size() + 1;
      if (!Unfinished.is(refused) && (ofIt || isRead(trial, kept))) {
        throw refused;
      }
    }
  }

  private boolean isRead(TrialName trial, List<Kept.Reading> readings) {
    try {
      stored.read(trial, readings);
      return true;
    } catch (Refused notYet) {
      return false;
    }
  }
}
