package rundlauf.reduce.runout;

/**
 * What a dial's retrace does to a turn of amplitude e. The needle follows as if through a slack of
 * width h: it reverses late. By the describing function of such slack (from memory, a standard
 * result of control theory) the once-per-turn part keeps the share {@code p = (π/2 + asin(1 − 2k) +
 * 2 (1 − 2k) √(k (1 − k))) / π} along, with k = h / 2e.
 */
final class DialLag {
  private DialLag() {}

  /**
   * Largest shift across the vector, m: the fundamental of a square wave of half-width h/2.
   *
   * @param retrace h, m, 0 or more
   */
  static double across(double retrace) {
    return 2 * retrace / Math.PI;
  }

  /**
   * Largest loss along the vector, m.
   *
   * @param retrace h, m, 0 or more
   * @param amplitude e as read, m, 0 or more
   * @return loss of amplitude; h/2 where the needle would hardly move
   */
  static double along(double retrace, double amplitude) {
    double k = amplitude == 0 ? 1 : Math.min(1, retrace / (2 * amplitude));
    double cosine = 1 - 2 * k;
    double kept = (Math.PI / 2 + Math.asin(cosine) + 2 * cosine * Math.sqrt(k * (1 - k))) / Math.PI;
    return Math.min(retrace / 2, (1 - kept) * Math.max(amplitude, retrace / 2));
  }
}
