package rundlauf.maths;

/**
 * How many draws, and from which seed. Every cause of doubt draws from its own stream, named by its
 * id, so two figures that share a cause share its draws whatever computed them and in whatever
 * order.
 *
 * @param seed any number
 * @param count number of draws, 200 to 1 000 000
 */
public record Draws(long seed, int count) {
  /** Default seed; our choice, any would do. */
  public static final long DEFAULT_SEED = 20_261_125L;

  /**
   * Default number of draws: the ends of a 95 % interval then move by about 3 % of its width with
   * the seed.
   */
  public static final int DEFAULT_COUNT = 4000;

  public static final Draws DEFAULT = new Draws(DEFAULT_SEED, DEFAULT_COUNT);

  public Draws {
    if (count < 200 || count > 1_000_000) {
      throw new IllegalArgumentException("count of draws " + count + " is not in 200 to 1000000");
    }
  }

  /** The stream of the cause with this id. */
  public Stream stream(String id) {
    return Stream.of(seed, id);
  }
}
