package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.CaseTable;

class DistributionsCaseTest {
  @ParameterizedTest
  @CsvSource({
    "p0.90, 0.90, 0.00051",
    "p0.95, 0.95, 0.00051",
    "p0.975, 0.975, 0.00051",
    "p0.99, 0.99, 0.00051",
    "p0.995, 0.995, 0.00051",
    "p0.999, 0.999, 0.0051",
  })
  void studentQuantiles(String column, double p, double tolerance) {
    CaseTable table = CaseTable.read("metrology/student_t");
    for (int i = 0; i < table.rows().size(); i++) {
      double k = Distributions.coverageFactor(2 * p - 1, table.number(i, "nu"));
      // source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, table of Student's t
      assertThat(k).as("nu of row %d", i).isCloseTo(table.number(i, column), within(tolerance));
      assertThat(Distributions.student(k, table.number(i, "nu"))).isCloseTo(p, within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({"0.6827, 1.000", "0.90, 1.645", "0.95, 1.960", "0.9545, 2.000", "0.99, 2.576"})
  void normalCoverageFactors(double level, double k) {
    // source: from memory: JCGM 100:2008, Table G.2, last row (infinite degrees of freedom)
    assertThat(Distributions.coverageFactor(level, Double.POSITIVE_INFINITY))
        .isCloseTo(k, within(0.001));
  }

  @ParameterizedTest
  @CsvSource({"0.80, 0.84", "0.90, 1.28", "0.95, 1.64", "0.99, 2.33", "0.999, 3.09"})
  void conformanceProbability(double p, double z) {
    // source: from memory: JCGM 106:2012, 7.3, Table 1
    assertThat(Distributions.normalQuantile(p)).isCloseTo(z, within(0.006));
    assertThat(Distributions.normal(z)).isCloseTo(p, within(0.002));
  }

  @Test
  void fisherTailOfAnalysisOfVariance() {
    // source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.3.3: F 9.59, p 0.00325
    assertThat(Distributions.fisherTail(9.59, 2, 12)).isCloseTo(0.00325, within(0.000005));
  }

  @ParameterizedTest
  @CsvSource({"57.0193, 2, 165, 1.5e-19", "15.1454, 2, 163, 9.3e-7", "19.4297, 2, 161, 2.8e-8"})
  void fisherTailFarOut(double f, double numerator, double denominator, double p) {
    // source: recomputed: F of each added pair of harmonics of NIST StRD ENSO and its tail
    assertThat(Distributions.fisherTail(f, numerator, denominator))
        .isCloseTo(p, Percentage.withPercentage(4));
  }

  @Test
  void fisherTailOfNoExcessIsOne() {
    assertThat(Distributions.fisherTail(0, 3, 5)).isEqualTo(1);
  }
}
