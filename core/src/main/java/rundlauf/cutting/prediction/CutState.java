package rundlauf.cutting.prediction;

import rundlauf.cutting.Conditions;

/** One state of a cut: what holds it and how it is cut. */
record CutState(HeldState held, Conditions cut) {
  /** Speed of the feed [m/s]. */
  double feed() {
    return cut.speed() * held.tool().teeth() * cut.feedPerTooth();
  }

  /** What is removed by time, while the cutter is in the work [m3/s]. */
  double removalRate() {
    return cut.axial() * cut.radial() * feed();
  }

  /** Speed of the edges [m/s]. */
  double cuttingSpeed() {
    return Math.PI * held.tool().diameter() * cut.speed();
  }

  /** Power to be had at the speed of the cut [W]. */
  double availablePower() {
    return held.setup().powerAt(cut.speed());
  }
}
