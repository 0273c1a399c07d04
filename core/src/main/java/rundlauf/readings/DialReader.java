package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Entry;
import rundlauf.bench.Indicator;
import rundlauf.bench.Section;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/**
 * The indicator of a trial, and the way from what its needle showed to metres along the measured
 * direction.
 *
 * @param limits corrected by the cosine of its angle
 * @param grid what readings are rounded to, as read
 * @param division of the dial, as read
 * @param cosine of the angle between plunger and measured direction
 */
record DialReader(IndicatorLimits limits, Quantity grid, Quantity division, double cosine) {
  /** Divisions of one turn of the needle (common practice, no source). */
  private static final double DIVISIONS_A_TURN = 100;

  /**
   * How far from the grid a reading may lie, in steps of the grid: what converting decimals to
   * binary leaves behind is under a millionth of this.
   */
  private static final double NEAR = 1e-6;

  /** The indicator that {@code indicator:} describes or names. */
  static DialReader read(String file, Section s, Optional<Bench> bench) {
    Entry entry =
        s.entry("indicator")
            .orElseThrow(() -> Refused.at(s.place("indicator"), "indicator-missing"));
    if (entry instanceof Entry.Fields) {
      return of(file, Indicator.inline(entry));
    }
    String name = s.requiredText("indicator");
    Bench defining = bench.orElseThrow(() -> HeadReader.withoutBench(s, "indicator"));
    return defining
        .indicator(name)
        .map(indicator -> of("indicator/" + name, indicator))
        .orElseThrow(
            () -> {
              List<String> defined =
                  defining.indicators().stream().map(i -> i.name().orElse("")).toList();
              return BenchReader.undefined(s.place("indicator"), name, defined);
            });
  }

  private static DialReader of(String record, Indicator indicator) {
    double cosine = Math.cos(indicator.angle().map(Quantity::si).orElse(0.0));
    Quantity grid = indicator.readTo().orElse(indicator.division());
    IndicatorLimits limits =
        new IndicatorLimits(
            record,
            indicator.division().si() * cosine,
            grid.si() * cosine,
            indicator.limitOfError().map(l -> limit(l, indicator.division().si(), cosine)),
            times(indicator.hysteresis(), cosine),
            times(indicator.repeatability(), cosine),
            times(indicator.tipRadius(), 1),
            indicator.angle(),
            indicator.fromNorm());
    return new DialReader(limits, grid, indicator.division(), cosine);
  }

  private static IndicatorLimits.LimitOfError limit(
      Indicator.Limit typed, double division, double cosine) {
    return new IndicatorLimits.LimitOfError(
        times(typed.tenthTurn(), cosine),
        times(typed.halfTurn(), cosine),
        times(typed.turn(), cosine),
        typed.range().si() * cosine,
        DIVISIONS_A_TURN * division * cosine);
  }

  private static OptionalDouble times(Optional<Quantity> typed, double factor) {
    return typed.isPresent()
        ? OptionalDouble.of(typed.get().si() * factor)
        : OptionalDouble.empty();
  }

  /**
   * A reading along the measured direction.
   *
   * @param shown what the needle showed [m], or divisions
   * @param cell as it was typed
   * @param unit it was typed in; {@link Unit#ONE}: divisions
   * @return shown · cos(angle) [m]
   * @throws Refused when it does not lie on the grid that readings are said to be rounded to
   */
  double along(double shown, Entry.Scalar cell, Unit unit) {
    double length = unit == Unit.ONE ? shown * division.si() : shown;
    double steps = length / grid.si();
    if (Math.abs(steps - Math.rint(steps)) > NEAR + Math.abs(steps) * 1e-12) {
      throw Refused.at(
          cell.place(),
          "reading-off-grid",
          Arg.typed(cell.text() + " " + symbol(unit)),
          Arg.of(Format.typed(grid)),
          Arg.of(grid.si() / 2, grid.unit()));
    }
    return length * cosine;
  }

  private static String symbol(Unit unit) {
    return unit == Unit.ONE ? Column.DIVISIONS : unit.symbol();
  }
}
