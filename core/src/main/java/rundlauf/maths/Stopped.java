package rundlauf.maths;

/** Thrown out of a long function whose work is no longer wanted. */
public final class Stopped extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public Stopped() {
    super("stopped");
  }
}
