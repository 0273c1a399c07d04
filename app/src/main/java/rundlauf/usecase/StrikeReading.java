package rundlauf.usecase;

import rundlauf.bench.RowColumns;

/** Strikes a reading out: it stays where it is, with the reason, and is not used. */
public final class StrikeReading {
  private final BenchStore benches;

  public StrikeReading(BenchStore benches) {
    this.benches = benches;
  }

  /**
   * Strikes a reading out; the same again changes nothing.
   *
   * @param reason as typed, on one line
   * @throws rundlauf.quantity.Refused when there is no such reading, no reason, or it was struck
   *     for another one
   */
  public Kept.Strike strike(TrialName trial, String key, String reason) {
    String text = reason.strip();
    CellText.require(RowColumns.REASON, text);
    return benches.strike(trial, key, text);
  }
}
