package rundlauf.planning;

import rundlauf.cutting.prediction.CutAsked;

/**
 * One cut of a grid.
 *
 * @param passes that the feature is taken in
 * @param seconds to cut each metre of the feature's length [s/m]
 * @param at its place in the grid
 */
record GridCut(CutAsked cut, SetupPlan.Passes passes, double seconds, At at) {
  /** Indices: greater is heavier. */
  record At(int way, int speed, int feed, int deep) {}

  boolean isButForSpeed(GridCut other) {
    return at.way() == other.at.way()
        && at.feed() == other.at.feed()
        && at.deep() == other.at.deep();
  }
}
