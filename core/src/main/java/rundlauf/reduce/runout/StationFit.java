package rundlauf.reduce.runout;

import java.util.List;
import rundlauf.maths.CoarsePosterior;
import rundlauf.maths.CoarseScale;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.readings.RunoutReadings;

/**
 * The curve of one sweep.
 *
 * @param orders harmonics fitted
 * @param rows the design
 * @param leastSquares for starting values, slopes and residuals
 * @param angleSd what wrongly set angles add to each reading, sd [m]
 * @param posterior draws of the curve's coefficients
 */
record StationFit(
    List<Integer> orders,
    List<Samples> rows,
    LeastSquares leastSquares,
    Samples angleSd,
    CoarsePosterior posterior) {

  /**
   * Fits the curve.
   *
   * @param sweep n readings over n angles
   * @param trial for the grid and the angle limit
   * @param cause names the stream of the draws
   */
  static StationFit of(
      RunoutReadings.Sweep sweep, RunoutReadings trial, String cause, Draws draws) {
    double step = trial.indicator().readTo();
    List<Integer> orders = Harmonics.borne(sweep.angle(), sweep.reading(), step);
    double[][] rows = Curve.rows(sweep.angle(), orders);
    LeastSquares fit = LeastSquares.fit(rows, sweep.reading());
    double angleU = trial.angleLimit() / Math.sqrt(3);
    Samples angleSd =
        sweep.angle().map(t -> Math.abs(Curve.slope(t, orders, fit.coefficients())) * angleU);
    CoarsePosterior posterior =
        CoarseScale.posterior(
            rows, sweep.reading(), step, angleSd, draws.count(), draws.stream(cause));
    return new StationFit(
        orders, List.of(rows).stream().map(Samples::of).toList(), fit, angleSd, posterior);
  }

  /**
   * Standard deviation of the once-per-turn component that stands at {@code direction}, for
   * independent reading errors of the given standard deviations: the pseudo-inverse applied to
   * them.
   */
  double propagated(Samples sd, double direction) {
    double squares = 0;
    for (int j = 0; j < rows.size(); j++) {
      double a = 0;
      double b = 0;
      for (int c = 0; c < rows.get(j).size(); c++) {
        a += leastSquares.unscaled(1, c) * rows.get(j).get(c);
        b += leastSquares.unscaled(2, c) * rows.get(j).get(c);
      }
      double share = (a * Math.cos(direction) + b * Math.sin(direction)) * sd.get(j);
      squares += share * share;
    }
    return Math.sqrt(squares);
  }

  /** Posterior standard deviation of the component at {@code direction}. */
  double spread(double direction) {
    Samples a = posterior.coefficient(1);
    Samples b = posterior.coefficient(2);
    return Samples.generate(
            a.size(), i -> a.get(i) * Math.cos(direction) + b.get(i) * Math.sin(direction))
        .standardDeviation();
  }
}
