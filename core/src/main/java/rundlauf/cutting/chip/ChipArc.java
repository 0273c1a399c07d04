package rundlauf.cutting.chip;

/**
 * A stretch of a tooth's way over which the chip is {@code h = rise sin φ + lead}.
 *
 * @param from angle of the tooth where it begins [rad], 0 or more
 * @param to where it ends [rad], at most π
 * @param rise m · feed per tooth: the surface it meets is m teeth old [m]
 * @param lead how much farther out it stands than the tooth that made that surface [m]
 */
public record ChipArc(double from, double to, double rise, double lead) {
  /** Thickness at an angle of the tooth within the stretch [m]. */
  public double thickness(double phi) {
    return rise * Math.sin(phi) + lead;
  }

  /** Integral of the thickness over the stretch [m rad]. */
  public double area() {
    return rise * (Math.cos(from) - Math.cos(to)) + lead * (to - from);
  }
}
