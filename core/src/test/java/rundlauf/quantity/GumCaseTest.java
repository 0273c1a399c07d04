package rundlauf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import rundlauf.CaseTable;
import rundlauf.maths.Distributions;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;

/** The worked examples of JCGM 100:2008. */
class GumCaseTest {
  /** l = l_S + d − l_S (δα θ + α_S δθ), in nanometres and kelvins. */
  private static final ToDoubleFunction<double[]> END_GAUGE =
      x -> x[0] + x[1] - x[0] * (x[2] * x[5] + x[4] * x[3]);

  @Test
  void endGaugeToFirstOrder() {
    Measured length = Measured.through(END_GAUGE, Unit.NANOMETRE, endGauge(true));
    // source: JCGM 100:2008, H.1, equation H.1.4: u_c 32 nm; recomputed 31.7106 nm
    assertThat(length.u()).isCloseTo(31.7106, within(0.0001));
    // source: JCGM 100:2008, H.1.6: 16 effective degrees of freedom, truncated from 16.656
    assertThat(length.dof()).isCloseTo(16.656, within(0.001));
    // source: JCGM 100:2008, H.1.6: U_99 93 nm with the dof truncated; recomputed 92.62 nm
    double k = Distributions.coverageFactor(0.99, Math.floor(length.dof()));
    assertThat(k * length.u()).isCloseTo(92.62, within(0.01));
    // source: recomputed: the estimate of JCGM 100:2008, H.1
    assertThat(length.value()).isCloseTo(50_000_838, within(1e-6));
  }

  @Test
  void endGaugeBudgetNamesTheLargestFirst() {
    Measured length = Measured.through(END_GAUGE, Unit.NANOMETRE, endGauge(true));
    // source: JCGM 100:2008, Table H.1: contributions 25, 16.6 (recomputed 16.675), 9.7, 2.9 nm
    assertThat(length.budget().stream().map(share -> share.cause().part()).limit(4))
        .containsExactly("l_S", "delta_theta", "d", "delta_alpha");
    assertThat(length.budget().get(1).u()).isCloseTo(16.675, within(0.001));
    assertThat(length.budget().get(3).u()).isCloseTo(2.9, within(0.001));
  }

  @Test
  void endGaugeWithItsSecondOrderTerms() {
    Draws draws = new Draws(Draws.DEFAULT_SEED, 400_000);
    Figure[] inputs = endGauge(false);
    Drawn length = Drawn.through(END_GAUGE, Unit.NANOMETRE, draws, inputs);
    // source: JCGM 100:2008, H.1.7: 34 nm with second-order terms; recomputed 33.9111 nm
    assertThat(length.estimate().orElseThrow().u()).isCloseTo(33.9111, within(0.15));
  }

  private static Measured[] endGauge(boolean finite) {
    CaseTable table = CaseTable.read("metrology/gum_h1");
    Measured[] inputs = new Measured[table.rows().size()];
    for (int i = 0; i < inputs.length; i++) {
      String name = table.rows().get(i).get(0);
      boolean scatter = finite && !table.rows().get(i).get(table.columns().indexOf("nu")).isEmpty();
      Cause cause =
          scatter
              ? Cause.scatter("gauge", name, table.number(i, "nu"))
              : Cause.normal("gauge", name);
      inputs[i] =
          Measured.exact(table.number(i, "estimate"), Unit.ONE).with(cause, table.number(i, "u"));
    }
    return inputs;
  }

  @Test
  void resistanceAndReactanceFromCorrelatedInputs() {
    Measured[] inputs = correlated(CaseTable.read("metrology/gum_h2"), "V", "I", "phi");
    // source: JCGM 100:2008, H.2, Table H.2: u of the three means, and their correlations
    assertThat(inputs[0].u()).isCloseTo(0.0032, within(0.00005));
    assertThat(inputs[1].u()).isCloseTo(0.0095e-3, within(0.00005e-3));
    assertThat(inputs[2].u()).isCloseTo(0.00075, within(0.000005));
    assertThat(correlation(inputs[0], inputs[1])).isCloseTo(-0.355311, within(1e-6));
    assertThat(correlation(inputs[0], inputs[2])).isCloseTo(0.857624, within(1e-6));
    assertThat(correlation(inputs[1], inputs[2])).isCloseTo(-0.645111, within(1e-6));
    Measured r = Measured.through(x -> x[0] / x[1] * Math.cos(x[2]), Unit.OHM, inputs);
    Measured x = Measured.through(v -> v[0] / v[1] * Math.sin(v[2]), Unit.OHM, inputs);
    Measured z = Measured.through(v -> v[0] / v[1], Unit.OHM, inputs);
    // source: from memory: JCGM 100:2008, H.2, Table H.3: R, X, Z; more digits recomputed
    assertThat(r.value()).isCloseTo(127.73217, within(1e-5));
    assertThat(x.value()).isCloseTo(219.84651, within(1e-5));
    assertThat(z.value()).isCloseTo(254.25970, within(1e-5));
    assertThat(r.u()).isCloseTo(0.0710714, within(1e-6));
    assertThat(x.u()).isCloseTo(0.2955817, within(1e-6));
    assertThat(z.u()).isCloseTo(0.2363361, within(1e-6));
    assertThat(correlation(r, x)).isCloseTo(-0.588430, within(1e-5));
    assertThat(correlation(r, z)).isCloseTo(-0.485259, within(1e-5));
    assertThat(correlation(x, z)).isCloseTo(0.992512, within(1e-5));
  }

  @Test
  void correlationsIgnoredGiveOtherUncertainties() {
    Measured[] inputs = correlated(CaseTable.read("metrology/gum_h2"), "V", "I", "phi");
    Measured[] apart = new Measured[3];
    for (int i = 0; i < 3; i++) {
      Cause own = Cause.normal("apart", "input " + i);
      apart[i] = Measured.exact(inputs[i].value(), Unit.ONE).with(own, inputs[i].u());
    }
    Measured r = Measured.through(x -> x[0] / x[1] * Math.cos(x[2]), Unit.OHM, apart);
    Measured z = Measured.through(v -> v[0] / v[1], Unit.OHM, apart);
    // source: from memory: JCGM 100:2008, Table H.5: 0.195 and 0.204 ohm; more digits recomputed
    assertThat(r.u()).isCloseTo(0.194544, within(1e-6));
    assertThat(z.u()).isCloseTo(0.204076, within(1e-6));
  }

  /** Means of the columns as functions of shared causes, by the Cholesky factor of their cov. */
  private static Measured[] correlated(CaseTable table, String... names) {
    int n = table.rows().size();
    Measured[] means = new Measured[names.length];
    double[][] factor = new double[names.length][names.length];
    for (int i = 0; i < names.length; i++) {
      means[i] = Measured.exact(table.column(names[i]).mean(), Unit.ONE);
      for (int j = 0; j <= i; j++) {
        double rest = covariance(table.column(names[i]), table.column(names[j])) / n;
        for (int k = 0; k < j; k++) {
          rest -= factor[i][k] * factor[j][k];
        }
        factor[i][j] = i == j ? Math.sqrt(rest) : rest / factor[j][j];
        means[i] = means[i].with(Cause.normal("readings", "direction " + j), factor[i][j]);
      }
    }
    return means;
  }

  private static double covariance(Samples a, Samples b) {
    double sum = 0;
    for (int i = 0; i < a.size(); i++) {
      sum += (a.get(i) - a.mean()) * (b.get(i) - b.mean());
    }
    return sum / (a.size() - 1);
  }

  private static double correlation(Measured a, Measured b) {
    return a.covariance(b) / (a.u() * b.u());
  }

  @Test
  void thermometerLineAndItsPrediction() {
    CaseTable table = CaseTable.read("metrology/gum_h3");
    LeastSquares fit = thermometer(table, 20);
    // source: JCGM 100:2008, H.3.3: y1 -0.1712 (0.0029), y2 0.00218 (0.00067), r -0.930, s 0.0035
    assertThat(fit.coefficients().get(0)).isCloseTo(-0.1712037901, within(1e-9));
    assertThat(fit.coefficients().get(1)).isCloseTo(0.0021826977, within(1e-9));
    assertThat(fit.u(0)).isCloseTo(0.0028775978, within(1e-9));
    assertThat(fit.u(1)).isCloseTo(0.0006679388, within(1e-9));
    assertThat(fit.residualSd()).isCloseTo(0.0034975640, within(1e-9));
    Measured[] line = figures(fit);
    assertThat(correlation(line[0], line[1])).isCloseTo(-0.9304296031, within(1e-9));
    Measured at30 = Measured.through(x -> x[0] + x[1] * (30 - 20), Unit.DEGREE_CELSIUS, line);
    // source: JCGM 100:2008, H.3.4: b(30 °C) -0.1494, u 0.0041; more digits recomputed
    assertThat(at30.value()).isCloseTo(-0.1493768127, within(1e-9));
    assertThat(at30.u()).isCloseTo(0.0041385958, within(1e-9));
  }

  @Test
  void thermometerLineFromItsMiddleHasNoCorrelation() {
    LeastSquares fit = thermometer(CaseTable.read("metrology/gum_h3"), 24.0085);
    // source: from memory: JCGM 100:2008, H.3.5: -0.1625, 0.0011, 0.00067, r 0; digits recomputed
    assertThat(fit.coefficients().get(0)).isCloseTo(-0.1624545, within(1e-7));
    assertThat(fit.u(0)).isCloseTo(0.00105456, within(1e-8));
    assertThat(fit.u(1)).isCloseTo(0.00066794, within(1e-8));
    assertThat(fit.unscaled(0, 1) / Math.sqrt(fit.unscaled(0, 0) * fit.unscaled(1, 1)))
        .isCloseTo(2.88e-5, within(1e-7));
  }

  private static LeastSquares thermometer(CaseTable table, double reference) {
    double[][] rows = new double[table.rows().size()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = new double[] {1, table.number(i, "tk") - reference};
    }
    return LeastSquares.fit(rows, table.column("bk"));
  }

  private static Measured[] figures(LeastSquares fit) {
    Cause shared = Cause.scatter("line", "intercept", fit.dof());
    Cause alone = Cause.scatter("line", "slope alone", fit.dof());
    double s = fit.residualSd();
    double first = Math.sqrt(fit.unscaled(0, 0));
    double cross = fit.unscaled(0, 1) / first;
    double rest = Math.sqrt(fit.unscaled(1, 1) - cross * cross);
    return new Measured[] {
      Measured.exact(fit.coefficients().get(0), Unit.DEGREE_CELSIUS).with(shared, s * first),
      Measured.exact(fit.coefficients().get(1), Unit.ONE)
          .with(shared, s * cross)
          .with(alone, s * rest)
    };
  }

  @Test
  void effectiveDegreesOfFreedomOfAProduct() {
    Measured product =
        Measured.through(
            x -> x[0] * x[1] * x[2], Unit.ONE, factor(0.25, 9), factor(0.57, 4), factor(0.82, 14));
    // source: from memory: JCGM 100:2008, G.4.2: u_c/y 1.03 %, 19.0 dof, U_95 2.2 %; digits
    // recomputed; the formula is printed in NIST/SEMATECH e-Handbook 2.5.7.1
    assertThat(product.u()).isCloseTo(1.02947e-2, within(1e-7));
    assertThat(product.dof()).isCloseTo(18.9987, within(0.0001));
    Interval interval = product.interval(0.95);
    assertThat((interval.high() - interval.low()) / 2).isCloseTo(2.1547e-2, within(0.0001e-2));
  }

  private static Measured factor(double percent, double dof) {
    Cause cause = Cause.scatter("factor of " + percent, "readings", dof);
    return Measured.exact(1, Unit.ONE).with(cause, percent / 100);
  }
}
