package rundlauf.simulated;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Stream;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;

/**
 * An indicator on paper.
 *
 * @param division [m]
 * @param readTo the grid its readings are written on [m]
 * @param zero where its zero was set
 * @param angle between plunger and measured direction [rad]
 * @param nuisances what goes wrong
 */
public record Dial(double division, double readTo, Zero zero, double angle, Nuisances nuisances) {
  /** Where the dial's zero is set: anywhere, on the first reading, or on the lowest. */
  public enum Zero {
    ANYWHERE,
    FIRST,
    LOWEST
  }

  /** Reads to its division, nothing wrong, zero anywhere. */
  public static Dial clean(double division) {
    return new Dial(division, division, Zero.ANYWHERE, 0, Nuisances.clean());
  }

  public Dial readTo(double grid) {
    return new Dial(division, grid, zero, angle, nuisances);
  }

  public Dial zeroed(Zero where) {
    return new Dial(division, readTo, where, angle, nuisances);
  }

  public Dial leaning(double radians) {
    return new Dial(division, readTo, zero, radians, nuisances);
  }

  public Dial with(Nuisances these) {
    return new Dial(division, readTo, zero, angle, these);
  }

  /** Where on its smooth error a trial begins: one draw for a trial. */
  public double beginning(Stream stream) {
    return stream.uniform() * nuisances.errorWave();
  }

  /**
   * What is written down.
   *
   * @param surface where the surface stood at each reading [m]
   * @param beginning from {@link #beginning}
   * @return the readings as whole steps of {@link #readTo}
   */
  public List<Long> steps(List<Double> surface, double beginning, Stream stream) {
    var needle = new Needle(this, beginning, stream);
    List<Double> shown = surface.stream().map(needle::follow).toList();
    double zeroAt = zeroOf(shown, stream);
    return shown.stream().map(s -> written(s - zeroAt, stream)).toList();
  }

  private double zeroOf(List<Double> shown, Stream stream) {
    return switch (zero) {
      case ANYWHERE -> shown.get(0) - stream.uniform() * readTo;
      case FIRST -> shown.get(0);
      case LOWEST -> shown.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    };
  }

  private long written(double value, Stream stream) {
    if (nuisances.digitPreference() > 0 && stream.uniform() < nuisances.digitPreference()) {
      double favoured = Math.rint(value / nuisances.favoured()) * nuisances.favoured();
      return Math.round(favoured / readTo);
    }
    return Math.round(value / readTo);
  }

  /** What a user who knows the maker's sheet would say of it. */
  public IndicatorLimits limits(String record) {
    double cos = Math.cos(angle);
    return new IndicatorLimits(
        record,
        division * cos,
        readTo * cos,
        Optional.of(nuisances.limitOfError())
            .filter(l -> l > 0)
            .map(
                l ->
                    new IndicatorLimits.LimitOfError(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        l * cos,
                        100 * division * cos)),
        positive(nuisances.retrace() * cos),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.of(angle).filter(a -> a != 0).map(a -> Quantity.exact(a, Unit.DEGREE)));
  }

  private static OptionalDouble positive(double value) {
    return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
