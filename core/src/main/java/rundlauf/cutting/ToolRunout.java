package rundlauf.cutting;

/**
 * How the teeth run out (contract 4): {@code R_k(z) = D/2 + e cos(first − 2π(k−1)/N − 2 z
 * tan(helix)/D)}, and the tilt the same with its own angle and z.
 *
 * @param eccentricity of the axis at the tip [m], 0 or more
 * @param firstTooth how far tooth 1 at the tip stands ahead of the high spot, in the sense of
 *     rotation [rad]
 * @param tilt change of the offset with height above the tip [m/m], 0 or more
 * @param tiltAngle how far tooth 1 at the tip stands ahead of the tilt's high spot [rad]
 */
public record ToolRunout(double eccentricity, double firstTooth, double tilt, double tiltAngle) {
  public ToolRunout {
    Range.notNegative("eccentricity", eccentricity, "m");
    Range.notNegative("tilt", tilt, "m/m");
  }

  public static final ToolRunout NONE = new ToolRunout(0, 0, 0, 0);
}
