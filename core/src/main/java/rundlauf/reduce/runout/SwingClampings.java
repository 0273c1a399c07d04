package rundlauf.reduce.runout;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.RunoutReadings.Sweep;
import rundlauf.reduce.runout.Runout.NextClamping;

/**
 * What the next clamping will be where only swings were read: their mean and scatter, put forward
 * by Student's t.
 */
final class SwingClampings {
  private SwingClampings() {}

  /**
   * The prediction.
   *
   * @param trial with swings only
   * @return tir with a prediction interval when two clampings or more were read at one station; no
   *     eccentricity
   */
  static NextClamping next(RunoutReadings trial) {
    OptionalDouble height = height(trial.sweeps());
    List<Sweep> there = trial.sweeps().stream().filter(s -> s.station().equals(height)).toList();
    var eccentricity = new Missing(Unit.MICROMETRE, Saying.of("swing-only", "nextClamping"));
    Figure tir =
        there.size() < 2
            ? new Missing(Unit.MICROMETRE, Saying.of("one-clamping-only", "nextClamping"))
            : predicted(trial, there);
    return new NextClamping(height, eccentricity, tir);
  }

  private static Figure predicted(RunoutReadings trial, List<Sweep> sweeps) {
    Samples swings = Samples.generate(sweeps.size(), i -> sweeps.get(i).swing().orElseThrow());
    int n = swings.size();
    IndicatorLimits dial = trial.indicator();
    // Two ends, each rounded: no scatter below theirs is believed.
    double scatter = Math.max(swings.standardDeviation(), dial.readTo() / Math.sqrt(6));
    String file = trial.head().name();
    Measured next =
        Measured.exact(swings.mean(), Unit.MICROMETRE)
            .with(Cause.scatter(file, "clamping", n - 1), scatter * Math.sqrt(1 + 1.0 / n));
    if (dial.limitOfError().isPresent()) {
      double limit = dial.limitOfError().get().over(swings.max());
      next = next.with(Cause.rectangular(dial.record(), "limit-of-error"), limit / Math.sqrt(3));
    }
    return next.notBelow(0);
  }

  /** The station of most swings, the outermost of several. */
  private static OptionalDouble height(List<Sweep> sweeps) {
    return sweeps.stream()
        .map(Sweep::station)
        .max(
            Comparator.<OptionalDouble>comparingLong(
                    z -> sweeps.stream().filter(s -> s.station().equals(z)).count())
                .thenComparingDouble(z -> z.orElse(0)))
        .orElse(OptionalDouble.empty());
  }
}
