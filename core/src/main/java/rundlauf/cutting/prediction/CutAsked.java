package rundlauf.cutting.prediction;

import rundlauf.bench.Cut;
import rundlauf.cutting.Operation;
import rundlauf.quantity.Quantity;

/**
 * How it is to be cut.
 *
 * @param operation how the cutter engages
 * @param speed of the spindle
 * @param feed by tooth or by time
 * @param axial depth along the axis, at most the flutes' length
 * @param radial width across it, at most the diameter; the diameter for a slot
 */
public record CutAsked(
    Operation operation, Quantity speed, Cut.Feed feed, Quantity axial, Quantity radial) {}
