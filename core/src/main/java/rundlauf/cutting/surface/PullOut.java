package rundlauf.cutting.surface;

import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** What pulls the cutter out of its collet and lifts the work. */
public final class PullOut {
  private PullOut() {}

  /**
   * Largest axial pull of a turn.
   *
   * <p>No trustworthy figure is published for what a small collet holds: the force is given, and
   * what it is held against must be known from elsewhere.
   *
   * @param turn forces on the cutter over a revolution; z positive pulls
   * @return [N], 0 when it only pushes; empty when the axial force is not known
   */
  public static OptionalDouble largest(ForceTurn turn) {
    return turn.z().size() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.max(0, turn.z().max()));
  }

  /** The pull, and that nothing is known to hold it against; empty when nothing pulls. */
  public static Optional<Saying> notJudged(ForceTurn turn) {
    double pull = largest(turn).orElse(0);
    return pull > 0
        ? Optional.of(Saying.of("pull-not-judged", "pull-out", Arg.about(pull, Unit.NEWTON)))
        : Optional.empty();
  }
}
