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
 * @param path of the figure in that trial's result
 * @param unit of the figure
 */
public record Trait(String kind, String path, Unit unit) {
  /** All traits, in the order they are read. */
  public static final List<Trait> ALL =
      List.of(
          new Trait("runout", "nextClamping.tir", Unit.MICROMETRE),
          new Trait("runout", "axis.tip.tir", Unit.MICROMETRE),
          new Trait("runout", "axis.tip.eccentricity", Unit.MICROMETRE),
          new Trait("runout", "axis.tilt", Unit.MICROMETRE_PER_MILLIMETRE),
          new Trait("runout", "clampingScatter", Unit.MICROMETRE),
          new Trait("side-load", "stiffness", Unit.NEWTON_PER_MICROMETRE),
          new Trait("side-load", "setupStiffness", Unit.NEWTON_PER_MICROMETRE),
          new Trait("side-load", "compliance", Unit.MICROMETRE_PER_NEWTON),
          new Trait("side-load", "play", Unit.MICROMETRE),
          new Trait("side-load", "hysteresis", Unit.MICROMETRE),
          new Trait("speed", "usable.min", Unit.RPM),
          new Trait("speed", "usable.max", Unit.RPM),
          new Trait("speed", "droop", Unit.RPM_PER_WATT));

  /** The figure of a setup; missing, with why, where no trial of the kind was reduced. */
  public Figure of(SetupResults setup) {
    return result(setup)
        .flatMap(r -> Optional.ofNullable(r.figures().get(path)))
        .orElseGet(() -> new Missing(unit, Saying.of("not-measured-" + kind, path)));
  }

  /** The trial's result that the figure is taken from. */
  public Optional<Reduced> result(SetupResults setup) {
    return setup.results().stream().filter(r -> r.head().kind().equals(kind)).findFirst();
  }
}
