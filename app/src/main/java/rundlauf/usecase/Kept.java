package rundlauf.usecase;

import java.time.Instant;
import java.util.Optional;

/** What a store answers: what was typed, where it stands, and when it was kept. */
public final class Kept {
  private Kept() {}

  /**
   * One edition of a document.
   *
   * @param number from 1, without gaps
   */
  public record Edition(int number, String document, Instant at) {}

  /**
   * A reading.
   *
   * @param position within its trial, from 1, without gaps, in the order in which they were kept
   * @param struck when it was struck out
   */
  public record Reading(int position, TypedReading typed, Instant at, Optional<Strike> struck) {}

  /** That a reading was struck out. */
  public record Strike(String reason, Instant at) {}

  /**
   * A recording or a photo of a trial.
   *
   * @param name its file's name in the trial
   * @param digest SHA-256 of its content, in hexadecimal digits
   * @param size in bytes
   */
  public record Attachment(String name, String digest, long size, Instant at) {}

  /**
   * A copy of a whole store.
   *
   * @param store its address, without secrets
   * @param place where the copy lies
   * @param bytes how large it is
   */
  public record Copy(String store, String place, long bytes) {}
}
