package rundlauf.cutting;

/**
 * How the cutter engages. Feed along +x, cutter clockwise seen from above; φ clockwise from +y
 * (docs/methods/chip.md).
 */
public enum Operation {
  /** The whole width: φ from 0 to π. */
  SLOT,
  /** Conventional: the wall on the +y side, made at φ = 0; φ from 0 to arccos(1 − 2a/D). */
  SIDE_UP,
  /** Climb: the wall on the −y side, made at φ = π; φ from arccos(2a/D − 1) to π. */
  SIDE_DOWN
}
