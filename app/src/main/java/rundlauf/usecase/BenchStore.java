package rundlauf.usecase;

import java.util.List;
import java.util.Optional;
import rundlauf.usecase.Kept.Edition;
import rundlauf.usecase.Kept.Reading;
import rundlauf.usecase.Kept.Strike;

/**
 * Where benches, trials and their readings are kept as they were typed. It is only added to: a
 * changed document is a new edition, a correction strikes a reading out and leaves it where it is.
 *
 * <p>What a method returns is kept for good: it has been written through to the disk. Whatever
 * cannot be kept is refused with {@link rundlauf.quantity.Refused}, and then nothing of it is kept.
 */
public interface BenchStore {
  /** The names of all benches, in the order in which they came. */
  List<String> benches();

  /**
   * Keeps the document of a bench, as the newest of its editions; the same text as the newest again
   * gives that one.
   *
   * @param bench its name
   * @param document {@code bench.yaml} as typed
   */
  Edition keepBench(String bench, String document);

  /** The newest edition of a bench's document. */
  Optional<Edition> bench(String bench);

  /** All editions of a bench's document, the oldest first; none: no such bench. */
  List<Edition> benchEditions(String bench);

  /** The names of a bench's trials, in the order in which they came. */
  List<String> trials(String bench);

  /**
   * Keeps the document of a trial, as the newest of its editions; the same text as the newest again
   * gives that one.
   *
   * @param trial of a bench that is kept
   * @param document as typed, without its table of readings
   */
  Edition keepTrial(TrialName trial, String document);

  /** All editions of a trial's document, the oldest first; none: no such trial. */
  List<Edition> editions(TrialName trial);

  /**
   * Adds a reading to a trial. The same key with the same cells again gives the reading that is
   * kept already, so whoever got no answer may ask again.
   *
   * @param trial that is kept
   * @param reading with the key that the device gave it
   */
  Reading append(TrialName trial, TypedReading reading);

  /**
   * Strikes a reading out: it stays where it is and is not used. The same again gives the strike
   * that is kept already.
   *
   * @param trial that is kept
   * @param key of the reading
   * @param reason as typed
   */
  Strike strike(TrialName trial, String key, String reason);

  /** All readings of a trial in their order, also those that were struck out. */
  List<Reading> readings(TrialName trial);

  /**
   * Copies the whole store beside itself while it is in use.
   *
   * @return where the copy lies
   */
  String backUp();
}
