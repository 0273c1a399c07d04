package rundlauf.cutting.surface;

import rundlauf.maths.Samples;

/** Marks of the feed on a wall: arcs of the teeth, side by side. */
public final class FeedMarks {
  private FeedMarks() {}

  /**
   * Peak to valley of the marks that teeth of unlike reach leave on a wall.
   *
   * <p>Each tooth leaves an arc {@code reach − x²/(2R)}, one feed per tooth after the one before
   * it; what stands is their envelope. The teeth's paths are taken as circles, as parabolas near
   * the wall.
   *
   * @param radius R of the cutter [m], over 0
   * @param feedPerTooth c [m], over 0
   * @param reaches how far each tooth reaches into the wall, in the order in which they follow each
   *     other [m]; only differences count
   * @return height [m], exact for the model: c²/(8R) for equal teeth, (Nc)²/(8R) when one tooth
   *     alone marks
   * @throws IllegalArgumentException for no tooth
   * @see "docs/methods/surface.md"
   */
  public static double height(double radius, double feedPerTooth, Samples reaches) {
    if (reaches.size() == 0) {
      throw new IllegalArgumentException("no tooth leaves a mark");
    }
    int farthest = farthest(reaches);
    int last = farthest + reaches.size();
    double lowest = reaches.max();
    int k = farthest;
    while (k < last) {
      int next = next(radius, feedPerTooth, reaches, k, last);
      double x = meeting(radius, feedPerTooth, reaches, k, next);
      lowest = Math.min(lowest, at(reaches, k) - x * x / (2 * radius));
      k = next;
    }
    return reaches.max() - lowest;
  }

  private static int farthest(Samples reaches) {
    int best = 0;
    for (int k = 1; k < reaches.size(); k++) {
      best = reaches.get(k) > reaches.get(best) ? k : best;
    }
    return best;
  }

  /** The tooth whose arc takes over first from that of tooth {@code k}. */
  private static int next(double radius, double feed, Samples reaches, int k, int last) {
    int first = k + 1;
    for (int j = k + 2; j <= last; j++) {
      if (meeting(radius, feed, reaches, k, j) < meeting(radius, feed, reaches, k, first)) {
        first = j;
      }
    }
    return first;
  }

  /** Where the arcs of two teeth meet, from the arc of the first. */
  private static double meeting(double radius, double feed, Samples reaches, int k, int j) {
    double apart = (j - k) * feed;
    return apart / 2 + radius * (at(reaches, k) - at(reaches, j)) / apart;
  }

  private static double at(Samples reaches, int k) {
    return reaches.get(k % reaches.size());
  }
}
