package rundlauf.cutting.surface;

/**
 * A V-tool.
 *
 * @param tip width of its flat tip [m], 0 or more
 * @param angle included angle [rad], over 0 and below π
 */
public record VTool(double tip, double angle) {
  public VTool {
    if (!(tip >= 0 && angle > 0 && angle < Math.PI)) {
      throw new IllegalArgumentException("tip " + tip + " m, included angle " + angle + " rad");
    }
  }

  /**
   * Width of the groove at the work's face.
   *
   * @param depth below the face [m], 0 or more
   * @param eccentricity of the tool's axis [m], 0 or more: it sweeps the groove wider by twice that
   * @return {@code tip + 2 depth tan(angle/2) + 2 eccentricity} [m]; exact for the model
   * @see "docs/methods/surface.md"
   */
  public double grooveWidth(double depth, double eccentricity) {
    return tip + widthPerDepth() * depth + 2 * eccentricity;
  }

  /** How much wider the groove gets for each metre of depth [m/m]: 2 tan(angle/2). */
  public double widthPerDepth() {
    return 2 * Math.tan(angle / 2);
  }
}
