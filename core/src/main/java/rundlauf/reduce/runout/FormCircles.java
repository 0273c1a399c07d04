package rundlauf.reduce.runout;

import rundlauf.maths.Circle;
import rundlauf.maths.EnclosingCircle;
import rundlauf.maths.ReferenceCircles;
import rundlauf.maths.Samples;

/**
 * A profile and its four reference circles, ISO 12181-1; centres from the profile's own.
 *
 * @param radius the profile's heights are counted from [m]
 * @param profile heights [m] at equal steps of the turn, from angle 0 on
 * @param leastSquares nearest and farthest point about its centre [m]
 * @param leastSquaresRadius the circle's own radius [m]
 * @param minimumZone between whose two circles the profile lies
 * @param circumscribed its outer radius is the circle's
 * @param inscribed its inner radius is the circle's
 */
public record FormCircles(
    double radius,
    Samples profile,
    Circle leastSquares,
    double leastSquaresRadius,
    Circle minimumZone,
    Circle circumscribed,
    Circle inscribed) {

  /** Of n ≥ 4 heights [m] at equal steps of the turn about {@code radius} [m]. */
  public static FormCircles of(Samples profile, double radius) {
    int n = profile.size();
    Samples xs = Samples.generate(n, p -> (radius + profile.get(p)) * Math.cos(angle(p, n)));
    Samples ys = Samples.generate(n, p -> (radius + profile.get(p)) * Math.sin(angle(p, n)));
    Circle squares = ReferenceCircles.leastSquares(xs, ys).orElseThrow();
    Samples far =
        Samples.generate(n, p -> Math.hypot(xs.get(p) - squares.x(), ys.get(p) - squares.y()));
    return new FormCircles(
        radius,
        profile,
        squares,
        far.mean(),
        ReferenceCircles.minimumZone(squares, xs, ys).orElse(squares),
        EnclosingCircle.of(xs, ys),
        ReferenceCircles.maximumInscribed(squares, xs, ys).orElse(squares));
  }

  /** The angle of point {@code p} of {@code n}, rad. */
  public static double angle(int p, int n) {
    return 2 * Math.PI * p / n;
  }

  /**
   * How high a circle lies over {@link #radius} when seen from the profile's own centre.
   *
   * @param about its centre [m]
   * @param of its radius [m]
   * @param angle from that centre [rad]
   * @return height [m]
   */
  public double height(Circle about, double of, double angle) {
    double along = about.x() * Math.cos(angle) + about.y() * Math.sin(angle);
    double across = about.y() * Math.cos(angle) - about.x() * Math.sin(angle);
    return along + Math.sqrt(of * of - across * across) - radius;
  }
}
