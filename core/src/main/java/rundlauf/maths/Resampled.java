package rundlauf.maths;

import java.util.function.IntToDoubleFunction;

/** Weighted draws made equally weighted ones. */
final class Resampled {
  private Resampled() {}

  /**
   * Systematic resampling, then shuffled, so that draw i of two posteriors are independent.
   *
   * @param size number of weighted draws
   * @param weight of each, summing to 1
   * @param count number of equally weighted draws wanted
   * @return which of the weighted draws each of them is
   */
  static int[] of(int size, IntToDoubleFunction weight, int count, Stream stream) {
    int[] chosen = new int[count];
    double next = stream.uniform() / count;
    double passed = 0;
    int k = 0;
    for (int i = 0; i < size; i++) {
      passed += weight.applyAsDouble(i);
      while (k < count && (next < passed || i == size - 1)) {
        chosen[k++] = i;
        next += 1.0 / count;
      }
    }
    for (int i = count - 1; i > 0; i--) {
      int j = stream.index(i + 1);
      int held = chosen[i];
      chosen[i] = chosen[j];
      chosen[j] = held;
    }
    return chosen;
  }
}
