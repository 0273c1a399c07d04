package rundlauf.simulated;

import java.util.List;

/**
 * The truth about a tool in a spindle.
 *
 * @param spindle the spindle's own part (its bore)
 * @param collet the collet's (or chuck's) part
 * @param shank the shank's part
 * @param lobes the form of the body touched
 * @param clampingScatter sd of one component of E at the nut's face from clamping to clamping [m]
 * @param tiltScatter sd of one component of the tilt from clamping to clamping [m/m]
 */
public record Holding(
    Part spindle,
    Part collet,
    Part shank,
    List<Lobe> lobes,
    double clampingScatter,
    double tiltScatter) {
  public Holding {
    lobes = List.copyOf(lobes);
  }

  /** A spindle that alone has an eccentricity; all else is true and repeats exactly. */
  public static Holding clean(double eccentricity, double highSpot) {
    return new Holding(Part.offset(eccentricity, highSpot), Part.TRUE, Part.TRUE, List.of(), 0, 0);
  }

  public Holding with(Lobe... form) {
    return new Holding(spindle, collet, shank, List.of(form), clampingScatter, tiltScatter);
  }

  public Holding withScatter(double offset, double tilt) {
    return new Holding(spindle, collet, shank, lobes, offset, tilt);
  }

  /** The mean over clampings of E at {@code station}, parts at these clock angles. */
  public Offset mean(double station, double colletClock, double shankClock) {
    return spindle
        .at(station, 0)
        .plus(collet.at(station, colletClock))
        .plus(shank.at(station, shankClock));
  }

  /** Height of all lobes. */
  public double form(double theta, double shankClock) {
    double sum = 0;
    for (Lobe lobe : lobes) {
      sum += lobe.at(theta, shankClock);
    }
    return sum;
  }
}
