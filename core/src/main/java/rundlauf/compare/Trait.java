package rundlauf.compare;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.Reduced;

/**
 * A figure that every setup of a side-by-side has a place for, measured or not.
 *
 * @param kind of trial that gives it
 * @param path of the figure in that trial's result; of a part or a joint by its name
 * @param unit of the figure
 * @param good which of two is the better one
 */
public record Trait(String kind, String path, Unit unit, Good good) {
  /** Which way is better. */
  public enum Good {
    SMALLER,
    LARGER,
    NEITHER
  }

  /** All traits, in the order they are read. */
  public static final List<Trait> ALL =
      List.of(
          runout("nextClamping.tir", Unit.MICROMETRE),
          runout("axis.tip.tir", Unit.MICROMETRE),
          runout("axis.tip.eccentricity", Unit.MICROMETRE),
          runout("axis.tilt", Unit.MICROMETRE_PER_MILLIMETRE),
          runout("clampingScatter", Unit.MICROMETRE),
          runout("bestClocking.tir", Unit.MICROMETRE),
          runout("parts.spindle.eccentricity", Unit.MICROMETRE),
          runout("parts.collet.eccentricity", Unit.MICROMETRE),
          runout("parts.shank.eccentricity", Unit.MICROMETRE),
          runout("stations.asynchronous", Unit.MICROMETRE),
          push("side-load", "stiffness", Unit.NEWTON_PER_MICROMETRE, Good.LARGER),
          push("side-load", "setupStiffness", Unit.NEWTON_PER_MICROMETRE, Good.LARGER),
          push("side-load", "compliance", Unit.MICROMETRE_PER_NEWTON, Good.SMALLER),
          push("side-load", "play", Unit.MICROMETRE, Good.SMALLER),
          push("side-load", "hysteresis", Unit.MICROMETRE, Good.SMALLER),
          push("side-load", "directions.soft.stiffness", Unit.NEWTON_PER_MICROMETRE, Good.LARGER),
          push("side-load", "directions.stiff.stiffness", Unit.NEWTON_PER_MICROMETRE, Good.LARGER),
          push("side-load", "shares.collet.compliance", Unit.MICROMETRE_PER_NEWTON, Good.SMALLER),
          push("side-load", "shares.bearings.compliance", Unit.MICROMETRE_PER_NEWTON, Good.SMALLER),
          push("side-load", "shares.mount.compliance", Unit.MICROMETRE_PER_NEWTON, Good.SMALLER),
          push("side-load", "shares.frame.compliance", Unit.MICROMETRE_PER_NEWTON, Good.SMALLER),
          push("axial", "endPlay", Unit.MICROMETRE, Good.SMALLER),
          push("axial", "axialStiffness", Unit.NEWTON_PER_MICROMETRE, Good.LARGER),
          new Trait("growth", "growth", Unit.MICROMETRE, Good.NEITHER),
          new Trait("growth", "settledAfter", Unit.MINUTE, Good.SMALLER),
          new Trait("speed", "usable.min", Unit.RPM, Good.NEITHER),
          new Trait("speed", "usable.max", Unit.RPM, Good.NEITHER),
          new Trait("speed", "droop", Unit.RPM_PER_WATT, Good.SMALLER));

  private static Trait runout(String path, Unit unit) {
    return new Trait("runout", path, unit, Good.SMALLER);
  }

  private static Trait push(String kind, String path, Unit unit, Good good) {
    return new Trait(kind, path, unit, good);
  }

  /** The figure of a setup; missing, with why, where no trial of the kind was reduced. */
  public Figure of(SetupResults setup) {
    return result(setup)
        .map(this::in)
        .orElseGet(() -> new Missing(unit, Saying.of("not-measured-" + kind, path)));
  }

  /** The result that the figure is taken from: the latest that tells it, else the latest. */
  public Optional<Reduced> result(SetupResults setup) {
    return setup
        .all(kind)
        .filter(result -> in(result).known())
        .findFirst()
        .or(() -> setup.of(kind));
  }

  /** The result that the figure is taken from, where a later one does not tell it. */
  public Optional<Reduced> earlier(SetupResults setup) {
    return result(setup).filter(setup.earlier()::contains);
  }

  /** The figure in a result of the kind; missing, with why, where the trial did not tell it. */
  Figure in(Reduced result) {
    return NamedFigure.of(result, path)
        .orElseGet(() -> new Missing(unit, Saying.of("not-told-by-trial", path)));
  }
}
