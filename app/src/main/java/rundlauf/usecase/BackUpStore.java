package rundlauf.usecase;

/** Copies the whole store beside itself while it is in use. */
public final class BackUpStore {
  private final BenchStore benches;

  public BackUpStore(BenchStore benches) {
    this.benches = benches;
  }

  /**
   * Makes a copy.
   *
   * @return where it lies
   * @throws rundlauf.quantity.Refused when it cannot be written
   */
  public String backUp() {
    return benches.backUp();
  }
}
