package rundlauf.simulated;

import rundlauf.maths.Stream;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;

/**
 * A lever that makes a side load of a mass: force = mass · gravity · load-arm / contact-arm.
 *
 * @param mass [kg] and its half-width
 * @param massHalf half-width of its limits [kg]
 * @param loadArm [m]
 * @param loadArmHalf [m]
 * @param contactArm [m]
 * @param contactArmHalf [m]
 */
public record Lever(
    double mass,
    double massHalf,
    double loadArm,
    double loadArmHalf,
    double contactArm,
    double contactArmHalf) {
  /** Standard gravity [m/s²]; source: 3rd CGPM (1901), from memory. */
  public static final double GRAVITY = 9.80665;

  /** Known without doubt, a force of {@code newtons} for each mass hung on. */
  public static Lever exact(double newtons) {
    return new Lever(newtons / GRAVITY, 0, 1, 0, 1, 0);
  }

  /** The force one mass is said to make [N]. */
  public double newtons() {
    return mass * GRAVITY * loadArm / contactArm;
  }

  /** True force over stated force, one draw within the limits. */
  double trueScale(Stream stream) {
    return within(stream, massHalf / mass)
        * within(stream, loadArmHalf / loadArm)
        / within(stream, contactArmHalf / contactArm);
  }

  private static double within(Stream stream, double relative) {
    return 1 + relative * (2 * stream.uniform() - 1);
  }

  /** The same as a user's readings know it: 1 with a rectangular cause for each limit. */
  public Measured scale(String record) {
    Measured scale = Measured.exact(1, Unit.ONE);
    scale = with(scale, record, "mass", massHalf / mass);
    scale = with(scale, record, "load-arm", loadArmHalf / loadArm);
    return with(scale, record, "contact-arm", -contactArmHalf / contactArm);
  }

  private static Measured with(Measured scale, String record, String part, double relative) {
    return relative == 0
        ? scale
        : scale.with(Cause.rectangular(record, part), relative / Math.sqrt(3));
  }
}
