package rundlauf.maths;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;

/** An immutable row of numbers: what a record holds instead of a bare array. */
public final class Samples {
  private final double[] values;

  private Samples(double[] values) {
    this.values = values;
  }

  /** A copy of the given numbers. */
  public static Samples of(double... values) {
    return new Samples(values.clone());
  }

  /** A copy of the given numbers. */
  public static Samples of(List<Double> values) {
    return new Samples(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** {@code n} numbers, the i-th being {@code f(i)}, i from 0. */
  public static Samples generate(int n, IntToDoubleFunction f) {
    double[] values = new double[n];
    for (int i = 0; i < n; i++) {
      values[i] = f.applyAsDouble(i);
    }
    return new Samples(values);
  }

  public int size() {
    return values.length;
  }

  public double get(int i) {
    return values[i];
  }

  public Samples map(DoubleUnaryOperator f) {
    return generate(values.length, i -> f.applyAsDouble(values[i]));
  }

  public DoubleStream stream() {
    return Arrays.stream(values);
  }

  /** A copy, for the numeric library. */
  public double[] toArray() {
    return values.clone();
  }

  public double sum() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** Arithmetic mean; of an empty row not a number. */
  public double mean() {
    return sum() / values.length;
  }

  /** Standard deviation with n − 1; 0 for fewer than two numbers. */
  public double standardDeviation() {
    if (values.length < 2) {
      return 0;
    }
    double mean = mean();
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / (values.length - 1));
  }

  public double min() {
    return stream().min().orElseThrow();
  }

  public double max() {
    return stream().max().orElseThrow();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Samples that && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return Arrays.toString(values);
  }
}
