package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Distributions;
import rundlauf.maths.LeastSquares;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.RunoutReadings.Sweep;

/** What in the readings must be looked at. */
final class RunoutCautions {
  /**
   * A closing reading off by more is a slip or a drift: two roundings can make up one step; our
   * choice.
   */
  private static final double CLOSING_STEPS = 2;

  /**
   * A gap over this leaves the curve to guesswork; our choice: eight positions with two left out.
   */
  private static final double WIDEST_GAP = Math.toRadians(135.5);

  /** Chance of calling one good reading of a sweep wrong; our choice. */
  private static final double CHANCE = 0.001;

  /** A reading is only called wrong when it is off by so many steps at least. */
  private static final double OFF_STEPS = 3;

  private static final double CROOKED = 0.01;

  private RunoutCautions() {}

  static List<Saying> of(RunoutReadings trial, List<AxisFit> fits) {
    List<Saying> cautions = new ArrayList<>();
    for (int k = 0; k < trial.sweeps().size(); k++) {
      Sweep sweep = trial.sweeps().get(k);
      if (sweep.swing().isEmpty()) {
        ofSweep(cautions, sweep, trial.indicator().readTo(), "stations[" + k + "]");
      }
    }
    for (AxisFit fit : fits) {
      double p = fit.straightness();
      if (p < CROOKED) {
        cautions.add(Saying.of("axis-not-straight", "axis", Arg.number(p)));
      }
    }
    return cautions;
  }

  private static void ofSweep(List<Saying> cautions, Sweep sweep, double step, String about) {
    double closing = sweep.reading().get(sweep.reading().size() - 1) - sweep.reading().get(0);
    if (closed(sweep) && Math.abs(closing) > CLOSING_STEPS * step * (1 + 1e-9)) {
      cautions.add(
          Saying.of(
              "slip-or-drift", about, Arg.of(closing, Unit.MICROMETRE), Arg.of(sweep.line())));
    }
    double gap = Harmonics.widestGap(sweep.angle());
    if (gap > WIDEST_GAP) {
      cautions.add(Saying.of("part-turn-unread", about, Arg.of(gap, Unit.DEGREE)));
    }
    oneOff(cautions, sweep, step, about);
  }

  /** Whether the last reading was taken where the first was. */
  static boolean closed(Sweep sweep) {
    int n = sweep.angle().size();
    return n > 1
        && Math.abs(
                Math.IEEEremainder(sweep.angle().get(n - 1) - sweep.angle().get(0), 2 * Math.PI))
            < 1e-6;
  }

  /**
   * The reading that the curve through all others finds too far off, by Student's t shared among
   * the readings.
   */
  private static void oneOff(List<Saying> cautions, Sweep sweep, double step, String about) {
    List<Integer> orders = Harmonics.borne(sweep.angle(), sweep.reading(), step);
    double[][] rows = Curve.rows(sweep.angle(), orders);
    int n = rows.length;
    LeastSquares fit = LeastSquares.fit(rows, sweep.reading());
    if (fit.dof() < 3) {
      return;
    }
    for (int j = 0; j < n; j++) {
      double kept = 1 - leverage(fit, rows[j]);
      double off = fit.residuals().get(j) / kept;
      double others = (fit.rss() - fit.residuals().get(j) * off) / (fit.dof() - 1);
      double variance = Math.max(others, step * step / 12) / kept;
      double t = Math.abs(off) / Math.sqrt(variance);
      double tail = 2 * (1 - Distributions.student(t, fit.dof() - 1.0));
      if (Math.abs(off) > OFF_STEPS * step && tail * n < CHANCE) {
        cautions.add(
            Saying.of(
                "one-reading-off",
                about,
                Arg.of(sweep.angle().get(j), Unit.DEGREE),
                Arg.of(off, Unit.MICROMETRE)));
        return;
      }
    }
  }

  private static double leverage(LeastSquares fit, double[] row) {
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      for (int j = 0; j < row.length; j++) {
        sum += row[i] * fit.unscaled(i, j) * row[j];
      }
    }
    return sum;
  }
}
