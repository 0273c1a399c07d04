package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import rundlauf.CaseTable;

class CoarseScaleCaseTest {
  @Test
  void onAScaleFineAgainstTheScatterItIsLeastSquares() {
    CaseTable norris = CaseTable.read("metrology/nist_norris");
    Samples x = norris.column("x");
    double[][] rows = new double[x.size()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = new double[] {1, x.get(i)};
    }
    // The certified readings are written to 0.1, a ninth of their scatter.
    var posterior =
        CoarseScale.posterior(
            rows,
            norris.column("y"),
            0.1,
            Samples.generate(rows.length, i -> 0),
            20_000,
            Stream.of(1, "norris"));
    // source: NIST StRD, Norris: certified slope and its sd, certified residual sd
    assertThat(posterior.coefficient(1).mean()).isCloseTo(1.00211681802045, within(3e-5));
    assertThat(posterior.coefficient(1).standardDeviation())
        .isCloseTo(0.429796848199937e-3, within(0.02e-3));
    assertThat(posterior.sigma().mean()).isCloseTo(0.884796396144373, within(0.03));
  }

  @Test
  void agreesWithQuadratureOnThreeCoarseReadings() {
    double[] readings = {0, 0, 1};
    var posterior =
        CoarseScale.posterior(
            new double[][] {{1}, {1}, {1}},
            Samples.of(readings),
            1,
            Samples.of(0, 0, 0),
            20_000,
            Stream.of(1, "three"));
    var exact = quadrature(readings, false);
    var scatter = quadrature(readings, true);
    var drawnScatter = WeightedSamples.of(posterior.sigma().map(Math::log));
    var drawn = WeightedSamples.of(posterior.coefficient(0));
    // source: recomputed: by summing likelihood times prior over a grid of mean and scatter, in
    // this test
    for (double p : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
      assertThat(drawn.quantile(p)).isCloseTo(exact.quantile(p), within(0.03));
      assertThat(drawnScatter.quantile(p)).isCloseTo(scatter.quantile(p), within(0.08));
    }
  }

  /** Of the mean, or of ln σ. */
  private static WeightedSamples quadrature(double[] readings, boolean ofScatter) {
    int steps = 400;
    int levels = 600;
    double[] means = new double[steps];
    double[] byMean = new double[steps];
    double[] lnSigmas = new double[levels];
    double[] byScatter = new double[levels];
    for (int i = 0; i < steps; i++) {
      means[i] = 1.0 / 3 + (i - steps / 2) * 0.02;
      for (int k = 0; k < levels; k++) {
        lnSigmas[k] = -7 + 0.02 * k;
        double weight = weight(readings, means[i], Math.exp(lnSigmas[k]));
        byMean[i] += weight;
        byScatter[k] += weight;
      }
    }
    return ofScatter
        ? WeightedSamples.of(Samples.of(lnSigmas), Samples.of(byScatter))
        : WeightedSamples.of(Samples.of(means), Samples.of(byMean));
  }

  private static double weight(double[] readings, double mean, double sigma) {
    double weight = Math.exp(ScatterPrior.logDensity(sigma)) * sigma;
    for (double r : readings) {
      weight *=
          Distributions.normal((r + 0.5 - mean) / sigma)
              - Distributions.normal((r - 0.5 - mean) / sigma);
    }
    return weight;
  }

  @Test
  void thePriorOfTheScatterIsHalfOfStudentsT() {
    var student = new TDistribution(0.8);
    double scale = 0.3 / Math.sqrt(0.8);
    for (double sigma : new double[] {0.05, 0.3, 1, 7}) {
      // source: Hipparchus 4.0.3, TDistribution of 0.8 degrees of freedom, scaled by 0.3/√0.8
      assertThat(ScatterPrior.logDensity(sigma) - ScatterPrior.logDensity(0.1))
          .isCloseTo(
              Math.log(student.density(sigma / scale) / student.density(0.1 / scale)),
              within(1e-9));
    }
  }

  @Test
  void theTableOfTheNormalDistributionIsTheLibrarysToTwelveDigits() {
    for (double low = -8.5; low < 8; low += 0.37) {
      for (double width : new double[] {0.001, 0.3, 2, 20}) {
        double exact =
            low > 0
                ? Distributions.normal(-low) - Distributions.normal(-low - width)
                : Distributions.normal(low + width) - Distributions.normal(low);
        // source: Hipparchus 4.0.3, NormalDistribution
        assertThat(NormalTable.between(low, low + width)).isCloseTo(exact, within(1e-12));
      }
    }
  }

  @Test
  void refusesWhatItCannotBear() {
    Samples two = Samples.of(1, 2);
    Samples none = Samples.of(0, 0);
    double[][] rows = {{1, 0}, {1, 1}};
    assertThatThrownBy(() -> CoarseScale.posterior(rows, two, 1, none, 1000, Stream.of(1, "x")))
        .hasMessage("2 readings do not bear 2 unknowns");
    assertThatThrownBy(
            () ->
                CoarseScale.posterior(
                    new double[][] {{1}, {1}}, two, 0, none, 1000, Stream.of(1, "x")))
        .hasMessage("step 0.0 is not over 0");
  }
}
