package rundlauf.reduce.push;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.WeightedSamples;
import rundlauf.readings.LoadReadings.Point;

/**
 * One fitted line: travel along the push = intercept + compliance · force, in one direction at one
 * place.
 *
 * @param direction of the push [rad]
 * @param place the body touched
 * @param intercept travel at no force [m]
 * @param compliance travel over force [m/N]
 */
public record Line(double direction, String place, double intercept, double compliance) {
  /** The lines of every side at the middle of their draws, to be drawn among the readings. */
  public static List<Line> of(LoadLines lines, LoadFit fit) {
    double slope = middle(fit, lines.slopeColumn());
    double half = lines.play() ? middle(fit, lines.playColumn()) / 2 : 0;
    List<Line> all = new ArrayList<>();
    for (List<Point> side : lines.sides()) {
      Point p = side.get(0);
      double offset = middle(fit, lines.zeroings().indexOf(p.zeroed()));
      double intercept = LoadLines.sign(p) * offset + half;
      double along = slope * Math.abs(LoadLines.cosine(p));
      all.add(new Line(p.direction(), p.place(), intercept, along));
    }
    return all;
  }

  private static double middle(LoadFit fit, int column) {
    return WeightedSamples.of(fit.coefficients().get(column)).quantile(0.5);
  }
}
