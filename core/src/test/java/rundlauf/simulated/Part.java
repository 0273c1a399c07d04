package rundlauf.simulated;

/**
 * What one part (spindle, collet, shank) adds to the eccentricity, its clock angle 0.
 *
 * @param atFace its offset at the nut's front face [m]
 * @param tilt what is added for each metre outward [m/m]
 */
public record Part(Offset atFace, Offset tilt) {
  public static final Part TRUE = new Part(Offset.NONE, Offset.NONE);

  /** A part that is only offset. */
  public static Part offset(double amplitude, double highSpot) {
    return new Part(Offset.of(amplitude, highSpot), Offset.NONE);
  }

  public Part tilted(double metresPerMetre, double highSpot) {
    return new Part(atFace, Offset.of(metresPerMetre, highSpot));
  }

  /** The offset {@code station} metres from the nut's face, the part turned by {@code clock}. */
  public Offset at(double station, double clock) {
    return atFace.plus(tilt.times(station)).clocked(clock);
  }
}
