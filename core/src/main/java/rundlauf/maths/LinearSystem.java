package rundlauf.maths;

import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;

/** Square systems of linear equations. */
public final class LinearSystem {
  private LinearSystem() {}

  /**
   * Solves by LU with partial pivoting.
   *
   * @param matrix n rows of n numbers; not changed
   * @param right n numbers
   * @return x with {@code matrix · x = right}, n numbers; nothing when the matrix is singular
   */
  public static Optional<double[]> solve(double[][] matrix, double[] right) {
    var solver =
        new LUDecomposition(new Array2DRowRealMatrix(matrix, false), Double.MIN_NORMAL).getSolver();
    return solver.isNonSingular()
        ? Optional.of(solver.solve(new ArrayRealVector(right, false)).toArray())
        : Optional.empty();
  }
}
