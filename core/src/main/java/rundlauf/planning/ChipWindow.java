package rundlauf.planning;

import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Operation;
import rundlauf.cutting.WorkMaterial;
import rundlauf.maths.Samples;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;

/**
 * Chips that may be asked of a cutter.
 *
 * @param thinnest that the edge still lifts [m]
 * @param thickest that is advised [m]
 */
record ChipWindow(double thinnest, double thickest) {
  private static final int FEEDS = 6;

  /** Thickest chip over the diameter where the material has none of its own; our choice. */
  static final double OF_DIAMETER = 0.01;

  /** Thinnest over thickest where the edge's radius is not known; our choice. */
  private static final double WITHOUT_RADIUS = 0.1;

  /** A turn may feed half a diameter at most: beyond it the arcs of the chip are another shape. */
  private static final double OF_TURN = 0.5;

  static ChipWindow of(WorkMaterial material, CutterInUse cutter) {
    double diameter = cutter.diameter().si();
    double thickest = material.chip().map(chip -> chip.at(diameter)).orElse(OF_DIAMETER * diameter);
    double thinnest =
        cutter
            .edgeRadius()
            .map(Quantity::si)
            .filter(radius -> radius > 0)
            .map(radius -> material.smallestChip().high() * radius)
            .orElse(WITHOUT_RADIUS * thickest);
    return new ChipWindow(thinnest, thickest);
  }

  /**
   * Feeds per tooth, rising: the thickest chip of a true-running cutter would go from the thinnest
   * to the thickest of the window. Where runout leaves the work to one tooth of several, its chip
   * is as many times as thick, so the least feed is that much less.
   */
  Samples feeds(Way way, CutterInUse cutter) {
    double full = sharpest(way, cutter.diameter().si());
    double most = OF_TURN * cutter.diameter().si() / cutter.teeth();
    double high = Math.min(most, thickest / full);
    double low = Math.min(high, thinnest / full / cutter.teeth());
    return Spacing.between(low, high, FEEDS, Unit.MICROMETRE);
  }

  /** Thickest chip over the feed: 1 from half the diameter on, thinner beside it. */
  private static double sharpest(Way way, double diameter) {
    double share = way.radial() / diameter;
    return way.operation() == Operation.SLOT || share >= 0.5
        ? 1
        : 2 * Math.sqrt(share * (1 - share));
  }
}
