package rundlauf.readings;

import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** What a sweep must have before a circle can be told from it. */
final class WholeTurn {
  /** Our choice: three unknowns (zero, along, across), and one reading left to judge them by. */
  static final int FEWEST = 4;

  private static final double TURN = 2 * Math.PI;
  private static final double SAME_ANGLE = 1e-9;

  private WholeTurn() {}

  /**
   * Refuses a sweep that leaves a circle open.
   *
   * @param angles in the order taken [rad]
   * @param place of the sweep's first row
   * @throws Refused for fewer than four readings, fewer than three positions round the turn, or
   *     more than half a turn unread
   */
  static void require(List<Double> angles, Place place) {
    if (angles.size() < FEWEST) {
      throw Refused.at(place, "too-few-readings", Arg.of(angles.size()), Arg.of(FEWEST));
    }
    List<Double> round = angles.stream().map(WholeTurn::round).sorted().toList();
    int positions = 1;
    double widest = round.get(0) + TURN - round.get(round.size() - 1);
    for (int i = 1; i < round.size(); i++) {
      double gap = round.get(i) - round.get(i - 1);
      positions += gap > SAME_ANGLE ? 1 : 0;
      widest = Math.max(widest, gap);
    }
    if (positions < 3) {
      throw Refused.at(place, "too-few-positions", Arg.of(positions), Arg.of(FEWEST));
    }
    if (widest > Math.PI + SAME_ANGLE) {
      throw Refused.at(place, "turn-not-covered", Arg.of(widest, Unit.DEGREE));
    }
  }

  /** Into one turn; what rounding puts just under a full turn is 0. */
  private static double round(double angle) {
    double round = angle - TURN * Math.floor(angle / TURN);
    return TURN - round < SAME_ANGLE ? 0 : round;
  }
}
