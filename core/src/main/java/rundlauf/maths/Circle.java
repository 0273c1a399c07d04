package rundlauf.maths;

/**
 * Two circles about one centre that hold a profile between them.
 *
 * @param x of the centre
 * @param y of the centre
 * @param inner radius of the nearest point
 * @param outer radius of the farthest point
 */
public record Circle(double x, double y, double inner, double outer) {
  /** The circles about a centre. */
  static Circle about(double x, double y, Samples xs, Samples ys) {
    double inner = Double.POSITIVE_INFINITY;
    double outer = 0;
    for (int i = 0; i < xs.size(); i++) {
      double far = distance(x, y, xs, ys, i);
      inner = Math.min(inner, far);
      outer = Math.max(outer, far);
    }
    return new Circle(x, y, inner, outer);
  }

  static double distance(double x, double y, Samples xs, Samples ys, int i) {
    double dx = xs.get(i) - x;
    double dy = ys.get(i) - y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Outer less inner radius: the roundness deviation about this centre. */
  public double width() {
    return outer - inner;
  }
}
