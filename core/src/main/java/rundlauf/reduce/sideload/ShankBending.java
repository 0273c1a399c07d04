package rundlauf.reduce.sideload;

import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;

/** The shank as a round bar built in at its grip, loaded across at a distance. */
final class ShankBending {
  /**
   * Poisson's ratio between that of cemented carbide and of steel; from memory. It moves the result
   * by less than 0.1 % at five diameters.
   */
  private static final double POISSON = 0.25;

  private ShankBending() {}

  /**
   * Deflection over force of a bar built in at one end, where the dial touches.
   *
   * <p>Euler–Bernoulli: {@code x²(3a − x) / 6EI} for x ≤ a, {@code a²(3x − a) / 6EI} beyond the
   * load; and shear: {@code min(a, x) / κGA}.
   *
   * @param load distance a of the load from the built-in end [m], over 0
   * @param dial distance x of the dial from it [m], over 0
   * @param diameter of the bar [m], over 0
   * @param modulus of elasticity [Pa], over 0
   * @return compliance [m/N], exact for the model
   * @see "docs/methods/side-load.md"
   */
  static double compliance(double load, double dial, double diameter, double modulus) {
    return bending(load, dial, diameter, modulus) + shear(load, dial, diameter, modulus);
  }

  static double bending(double load, double dial, double diameter, double modulus) {
    double near = Math.min(load, dial);
    double far = Math.max(load, dial);
    double inertia = Math.PI * Math.pow(diameter, 4) / 64;
    return near * near * (3 * far - near) / (6 * modulus * inertia);
  }

  static double shear(double load, double dial, double diameter, double modulus) {
    double area = Math.PI * diameter * diameter / 4;
    double rigidity = modulus / (2 * (1 + POISSON));
    return Math.min(load, dial) / (shearCoefficient() * rigidity * area);
  }

  /** Of a round bar: 6(1 + ν)/(7 + 6ν) (Cowper 1966; from memory). */
  static double shearCoefficient() {
    return 6 * (1 + POISSON) / (7 + 6 * POISSON);
  }

  /**
   * The same with its doubt: the grip begins anywhere from the nose's face to half a diameter
   * inside it.
   *
   * @param contact distance of the load from the face
   * @param at distance of the dial from the face [m]
   */
  static Measured of(LoadReadings.Body body, Quantity contact, double at, String file) {
    double half = body.diameter().si() / 4;
    Measured grip =
        Measured.exact(half, Unit.MILLIMETRE)
            .with(Cause.rectangular(file, "grip-point"), half / Math.sqrt(3));
    double between = at - contact.si();
    return Measured.through(
        v -> compliance(v[0] + v[1], v[0] + v[1] + between, v[2], v[3]),
        Unit.MICROMETRE_PER_NEWTON,
        contact.measured(Cause.rectangular(file, "contact")),
        grip,
        body.diameter().measured(Cause.rectangular(file, "body-diameter")),
        body.modulus().measured(Cause.rectangular(file, "body-modulus")));
  }
}
