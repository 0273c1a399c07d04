package rundlauf.reduce.sideload;

/** Weighted least squares of three coefficients, for many states of the world. */
final class NormalEquations {
  private NormalEquations() {}

  /**
   * Solves by Cramer's rule: quick, and good to half the digits of a double or better where rows
   * are scaled alike.
   *
   * @param rows three columns each, independent
   * @param values one a row
   * @param weights one a row, over 0
   */
  static double[] solved(double[][] rows, double[] values, double[] weights) {
    double[][] m = new double[3][3];
    double[] right = new double[3];
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < 3; j++) {
        right[j] += weights[i] * rows[i][j] * values[i];
        for (int k = 0; k < 3; k++) {
          m[j][k] += weights[i] * rows[i][j] * rows[i][k];
        }
      }
    }
    double whole = determinant(m);
    double[] solved = new double[3];
    for (int k = 0; k < 3; k++) {
      solved[k] = determinant(replaced(m, k, right)) / whole;
    }
    return solved;
  }

  private static double[][] replaced(double[][] m, int column, double[] by) {
    double[][] all = new double[3][];
    for (int j = 0; j < 3; j++) {
      all[j] = m[j].clone();
      all[j][column] = by[j];
    }
    return all;
  }

  private static double determinant(double[][] m) {
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  }
}
