package rundlauf.cutting;

/**
 * How it is cut, SI.
 *
 * @param operation how the cutter engages
 * @param speed n, turns per second, over 0
 * @param feedPerTooth c [m], over 0
 * @param axial a_p [m], over 0
 * @param radial a_e [m], over 0, at most D; D for a slot
 */
public record Conditions(
    Operation operation, double speed, double feedPerTooth, double axial, double radial) {
  public Conditions {
    Range.positive("speed", speed, "turns/s");
    Range.positive("feedPerTooth", feedPerTooth, "m");
    Range.positive("axial", axial, "m");
    Range.positive("radial", radial, "m");
  }

  /** Angle at which a tooth of a cutter of diameter {@code d} enters [rad]. */
  public double entry(double d) {
    return operation == Operation.SIDE_DOWN ? Math.acos(2 * radial / d - 1) : 0;
  }

  /** Angle at which it leaves [rad]. */
  public double exit(double d) {
    return operation == Operation.SIDE_UP ? Math.acos(1 - 2 * radial / d) : Math.PI;
  }
}
