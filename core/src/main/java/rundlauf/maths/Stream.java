package rundlauf.maths;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.TSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * A seeded stream of random numbers (L64X128Mix; Gaussian by the modified ziggurat), the same on
 * every JDK. Made by name, so that nobody's draws depend on who drew before.
 */
public final class Stream {
  private final UniformRandomProvider source;
  private final ZigguratSampler.NormalizedGaussian gaussian;

  private Stream(UniformRandomProvider source) {
    this.source = source;
    this.gaussian = ZigguratSampler.NormalizedGaussian.of(source);
  }

  /** The stream of {@code id} under {@code seed}. */
  public static Stream of(long seed, String id) {
    long state = mix(seed);
    for (int i = 0; i < id.length(); i++) {
      state = mix(state + id.charAt(i));
    }
    long[] words = new long[4];
    for (int i = 0; i < words.length; i++) {
      state += 0x9E3779B97F4A7C15L;
      words[i] = mix(state);
    }
    return new Stream(RandomSource.L64_X128_MIX.create(words));
  }

  /** SplitMix64's output function (Steele, Lea, Flood 2014; from memory). */
  private static long mix(long z) {
    long x = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    x = (x ^ (x >>> 27)) * 0x94D049BB133111EBL;
    return x ^ (x >>> 31);
  }

  /** Uniform in [0, 1). */
  public double uniform() {
    return source.nextDouble();
  }

  /** Uniform whole number in [0, n). */
  public int index(int n) {
    return source.nextInt(n);
  }

  /** Normal, mean 0, standard deviation 1. */
  public double gaussian() {
    return gaussian.sample();
  }

  /** {@code n} standard normal numbers. */
  public Samples gaussians(int n) {
    return Samples.generate(n, i -> gaussian());
  }

  /** {@code n} numbers of a rectangular distribution of mean 0 and standard deviation 1. */
  public Samples rectangulars(int n) {
    return Samples.generate(n, i -> Math.sqrt(12) * (uniform() - 0.5));
  }

  /**
   * {@code n} numbers of Student's t with {@code dof} degrees of freedom (not scaled to standard
   * deviation 1).
   */
  public Samples students(int n, double dof) {
    var sampler = TSampler.of(source, dof);
    return Samples.generate(n, i -> sampler.sample());
  }

  /**
   * {@code n} numbers of √(ν / χ²) on {@code dof} degrees of freedom ν: what a scatter estimated
   * from few readings may truly be, over its estimate. Times standard normal numbers they are
   * Student's t.
   */
  public Samples scatterFactors(int n, double dof) {
    var squares = AhrensDieterMarsagliaTsangGammaSampler.of(source, dof / 2, 2);
    return Samples.generate(n, i -> Math.sqrt(dof / squares.sample()));
  }

  /** χ² with a whole number of degrees of freedom, 1 or more. */
  public double chiSquare(int dof) {
    double sum = 0;
    for (int i = 0; i < dof; i++) {
      double g = gaussian();
      sum += g * g;
    }
    return sum;
  }
}
