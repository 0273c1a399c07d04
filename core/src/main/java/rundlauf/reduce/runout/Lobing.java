package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.DrawnVector;
import rundlauf.readings.RunoutReadings;

/**
 * The harmonics of a sweep that are form.
 *
 * @param orders 2 and up
 * @param vectors one an order
 * @param borne whether the readings bear them; else there is one, the likeliest to be there, and it
 *     may be nothing
 */
record Lobing(List<Integer> orders, List<DrawnVector> vectors, boolean borne) {

  /**
   * Of a fitted sweep.
   *
   * @param cause names the stream of the draws where no harmonic is borne
   * @return nothing where the readings leave no room for a second harmonic beside the circle
   */
  static Optional<Lobing> of(
      StationFit fit, RunoutReadings.Sweep sweep, RunoutReadings trial, String cause, Draws draws) {
    if (fit.orders().size() == 1) {
      return hidden(sweep, trial.indicator().readTo(), fit.angleSd(), draws.stream(cause), draws);
    }
    List<Integer> orders = fit.orders().subList(1, fit.orders().size());
    List<DrawnVector> vectors = new ArrayList<>();
    double factor = tipFactor(trial);
    Samples a = fit.posterior().coefficient(1);
    Samples b = fit.posterior().coefficient(2);
    for (int k = 1; k <= orders.size(); k++) {
      var read =
          new DrawnVector(
              fit.posterior().coefficient(1 + 2 * k),
              fit.posterior().coefficient(2 + 2 * k),
              Map.of());
      vectors.add(orders.get(k - 1) == 2 ? read.plus(squared(a, b), -factor) : read);
    }
    return Optional.of(new Lobing(orders, vectors, true));
  }

  /** 1/(4(R + ρ)) of a ball of radius ρ on a cylinder of radius R; 0 where one is not given. */
  static double tipFactor(RunoutReadings trial) {
    var ball = trial.indicator().tipRadius();
    return trial.gaugeDiameter().isPresent() && ball.isPresent()
        ? 1 / (4 * (trial.gaugeDiameter().getAsDouble() / 2 + ball.getAsDouble()))
        : 0;
  }

  /** E² as a complex number. */
  private static DrawnVector squared(Samples a, Samples b) {
    return new DrawnVector(
        Samples.generate(a.size(), i -> a.get(i) * a.get(i) - b.get(i) * b.get(i)),
        Samples.generate(a.size(), i -> 2 * a.get(i) * b.get(i)),
        Map.of());
  }

  /** What may be there unseen: Student's t about the order that takes most out of the residuals. */
  private static Optional<Lobing> hidden(
      RunoutReadings.Sweep sweep, double step, Samples angleSd, Stream stream, Draws draws) {
    int best = 0;
    LeastSquares fitted = null;
    for (int order = 2; order <= Harmonics.highest(sweep.angle()); order++) {
      double[][] rows = Curve.rows(sweep.angle(), List.of(1, order));
      if (rows.length <= rows[0].length) {
        break;
      }
      LeastSquares fit = LeastSquares.fit(rows, sweep.reading());
      if (fitted == null || fit.rss() < fitted.rss()) {
        best = order;
        fitted = fit;
      }
    }
    return fitted == null
        ? Optional.empty()
        : Optional.of(
            new Lobing(List.of(best), List.of(drawn(fitted, step, angleSd, stream, draws)), false));
  }

  private static DrawnVector drawn(
      LeastSquares fit, double step, Samples angleSd, Stream stream, Draws draws) {
    double angles = angleSd.stream().map(s -> s * s).average().orElse(0);
    double variance = Math.max(fit.rss() / fit.dof(), step * step / 12 + angles);
    double ua = Math.sqrt(variance * fit.unscaled(3, 3));
    double ub = Math.sqrt(variance * fit.unscaled(4, 4));
    Samples a = stream.students(draws.count(), fit.dof());
    Samples b = stream.students(draws.count(), fit.dof());
    double a0 = fit.coefficients().get(3);
    double b0 = fit.coefficients().get(4);
    return new DrawnVector(a.map(t -> a0 + ua * t), b.map(t -> b0 + ub * t), Map.of());
  }
}
