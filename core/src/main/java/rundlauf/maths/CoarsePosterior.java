package rundlauf.maths;

import java.util.ArrayList;
import java.util.List;

/**
 * Equally weighted draws of a coarse-scale posterior.
 *
 * @param coefficients one row of draws a coefficient, in the readings' unit
 * @param sigma draws of the scatter of a reading, in the readings' unit
 * @param effective how many independent draws they are worth
 */
public record CoarsePosterior(List<Samples> coefficients, Samples sigma, double effective) {
  public CoarsePosterior {
    coefficients = List.copyOf(coefficients);
  }

  static CoarsePosterior of(CoarseProblem problem, CoarseSample sample, int[] chosen) {
    List<Samples> coefficients = new ArrayList<>();
    for (int i = 0; i < problem.p(); i++) {
      int column = i;
      coefficients.add(
          Samples.generate(chosen.length, k -> sample.beta(chosen[k], column) * problem.step()));
    }
    Samples sigma =
        Samples.generate(chosen.length, k -> Math.exp(sample.lnSigma(chosen[k])) * problem.step());
    return new CoarsePosterior(coefficients, sigma, sample.effective());
  }

  /** Draws of coefficient {@code i}. */
  public Samples coefficient(int i) {
    return coefficients.get(i);
  }
}
