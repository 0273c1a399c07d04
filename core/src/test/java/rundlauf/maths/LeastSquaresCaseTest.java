package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import rundlauf.CaseTable;

class LeastSquaresCaseTest {
  /** The certified sets are met to ten digits and better; our choice. */
  private static final Percentage TEN_DIGITS = Percentage.withPercentage(1e-8);

  @Test
  void norris() {
    CaseTable norris = CaseTable.read("metrology/nist_norris");
    LeastSquares fit = line(norris.column("x"), norris.column("y"));
    // source: NIST StRD, Norris: certified coefficients, their sd, residual sd and sum of squares
    assertThat(fit.coefficients().get(0)).isCloseTo(-0.262323073774029, TEN_DIGITS);
    assertThat(fit.coefficients().get(1)).isCloseTo(1.00211681802045, TEN_DIGITS);
    assertThat(fit.u(0)).isCloseTo(0.232818234301152, TEN_DIGITS);
    assertThat(fit.u(1)).isCloseTo(0.429796848199937e-3, TEN_DIGITS);
    assertThat(fit.residualSd()).isCloseTo(0.884796396144373, TEN_DIGITS);
    assertThat(fit.rss()).isCloseTo(26.6173985294224, TEN_DIGITS);
    assertThat(fit.dof()).isEqualTo(34);
  }

  @Test
  void lineThroughTheOriginOfElevenPoints() {
    CaseTable set = CaseTable.read("metrology/nist_noint1");
    LeastSquares fit = throughOrigin(set.column("x"), set.column("y"));
    // source: NIST StRD, NoInt1: certified slope, its sd and residual sd
    assertThat(fit.coefficients().get(0)).isCloseTo(2.07438016528926, TEN_DIGITS);
    assertThat(fit.u(0)).isCloseTo(0.165289256198347e-1, TEN_DIGITS);
    assertThat(fit.residualSd()).isCloseTo(3.56753034006338, TEN_DIGITS);
    assertThat(fit.dof()).isEqualTo(10);
  }

  @Test
  void lineThroughTheOriginOfThreePoints() {
    LeastSquares fit = throughOrigin(Samples.of(4, 5, 6), Samples.of(3, 4, 4));
    // source: from memory: NIST StRD, NoInt2: slope, its sd and residual sd; a recomputation agrees
    assertThat(fit.coefficients().get(0)).isCloseTo(0.727272727272727, TEN_DIGITS);
    assertThat(fit.u(0)).isCloseTo(0.420827318078432e-1, TEN_DIGITS);
    assertThat(fit.residualSd()).isCloseTo(0.369274472937998, TEN_DIGITS);
    assertThat(fit.dof()).isEqualTo(2);
  }

  @Test
  void harmonicsAtKnownPeriods() {
    CaseTable enso = CaseTable.read("metrology/nist_enso");
    double[] periods = {12, 4.4311088700e1, 2.6887614440e1};
    Samples x = enso.column("x");
    double[][] rows = new double[x.size()][7];
    for (int i = 0; i < rows.length; i++) {
      rows[i][0] = 1;
      for (int k = 0; k < periods.length; k++) {
        double turn = 2 * Math.PI * x.get(i) / periods[k];
        rows[i][1 + 2 * k] = Math.cos(turn);
        rows[i][2 + 2 * k] = Math.sin(turn);
      }
    }
    LeastSquares fit = LeastSquares.fit(rows, enso.column("y"));
    // source: NIST StRD, ENSO: certified b1, b2, b3, b5, b6, b8, b9 and residual sum of squares;
    // the periods are printed to eleven digits
    assertThat(fit.rss()).isCloseTo(7.8853978668e2, Percentage.withPercentage(1e-7));
    double[] certified = {
      1.0510749193e1,
      3.0762128085,
      0.53280138227,
      -1.6231428586,
      0.52554493756,
      0.21232288488,
      1.4966870418
    };
    for (int k = 0; k < certified.length; k++) {
      assertThat(fit.coefficients().get(k))
          .isCloseTo(certified[k], Percentage.withPercentage(1e-5));
    }
  }

  @Test
  void weightsInYAlone() {
    CaseTable set = CaseTable.read("metrology/york_pearson");
    Samples x = set.column("x");
    double[][] rows = rows(x);
    LeastSquares fit = LeastSquares.fit(rows, set.column("y"), set.column("wy"));
    // source: Pearson 1901 with the weights of York 1966, as quoted in the tutorial of the Python
    // package kmpfit: intercept and slope with weights in y only
    assertThat(fit.coefficients().get(0)).isCloseTo(6.10010929336, within(1e-7));
    assertThat(fit.coefficients().get(1)).isCloseTo(-0.61081295310, within(1e-7));
  }

  @Test
  void oneWayAnalysisOfVarianceIsALevelForEachGroup() {
    CaseTable set = CaseTable.read("metrology/nist_anova_sirstv");
    Samples group = set.column("group");
    double[][] levels = new double[group.size()][5];
    double[][] one = new double[group.size()][1];
    for (int i = 0; i < levels.length; i++) {
      levels[i][(int) group.get(i) - 1] = 1;
      one[i][0] = 1;
    }
    LeastSquares within = LeastSquares.fit(levels, set.column("y"));
    LeastSquares whole = LeastSquares.fit(one, set.column("y"));
    // source: NIST StRD, SiRstv: certified sums of squares, residual sd and F; its readings carry
    // seven digits before they differ
    assertThat(within.rss()).isCloseTo(2.16636560000000e-1, TEN_DIGITS);
    assertThat(within.residualSd()).isCloseTo(1.04076068334656e-1, TEN_DIGITS);
    assertThat(within.dof()).isEqualTo(20);
    double between = whole.rss() - within.rss();
    assertThat(between).isCloseTo(5.11462616000000e-2, TEN_DIGITS);
    assertThat(between / 4 / (within.rss() / 20)).isCloseTo(1.18046237440255, TEN_DIGITS);
  }

  @Test
  void scaleOfTheColumnsDoesNotMatter() {
    CaseTable norris = CaseTable.read("metrology/nist_norris");
    Samples tiny = norris.column("x").map(x -> x * 1e-14);
    LeastSquares fit = line(tiny, norris.column("y"));
    // source: NIST StRD, Norris, its x in another unit
    assertThat(fit.coefficients().get(1) * 1e-14).isCloseTo(1.00211681802045, TEN_DIGITS);
    assertThat(fit.u(1) * 1e-14).isCloseTo(0.429796848199937e-3, TEN_DIGITS);
  }

  @Test
  void dependentColumnsAreRefused() {
    double[][] rows = {{1, 2}, {2, 4}, {3, 6}};
    assertThatThrownBy(() -> LeastSquares.fit(rows, Samples.of(1, 2, 3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the columns of the fit are not independent");
  }

  private static LeastSquares line(Samples x, Samples y) {
    return LeastSquares.fit(rows(x), y);
  }

  private static double[][] rows(Samples x) {
    double[][] rows = new double[x.size()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = new double[] {1, x.get(i)};
    }
    return rows;
  }

  private static LeastSquares throughOrigin(Samples x, Samples y) {
    double[][] rows = new double[x.size()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = new double[] {x.get(i)};
    }
    return LeastSquares.fit(rows, y);
  }
}
