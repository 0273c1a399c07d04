package rundlauf.simulated;

/** The demo bench's two indicators, as they truly are, in two people's hands. */
final class DemoDials {
  private static final double UM = 1e-6;
  private static final double THOU = 25.4e-6;

  /**
   * The plunger dial used with care: 1.5 µm of scatter, angles within 2°, backlash and a needle a
   * little stiff, a smooth error well inside what its maker allows.
   */
  static final Dial PLUNGER =
      Dial.clean(10 * UM)
          .with(
              Nuisances.clean()
                  .withScatter(1.5 * UM)
                  .withAngleError(Math.toRadians(2))
                  .withRetrace(1.5 * UM)
                  .withStick(0.5 * UM)
                  .withLimitOfError(6 * UM, 1e-3));

  /**
   * The same dial in a hurry: no mark on the chuck, the mill still humming, round numbers liked.
   */
  static final Dial HURRIED =
      PLUNGER
          .zeroed(Dial.Zero.FIRST)
          .with(
              PLUNGER
                  .nuisances()
                  .withScatter(5 * UM)
                  .withAngleError(Math.toRadians(8))
                  .withDigitPreference(0.2, 20 * UM));

  /** The inch lever dial, its stylus 15° off the measured direction; half a thou a division. */
  static final Dial LEVER =
      Dial.clean(0.5 * THOU)
          .leaning(Math.toRadians(15))
          .with(
              Nuisances.clean()
                  .withScatter(1.5 * UM)
                  .withAngleError(Math.toRadians(2))
                  .withRetrace(1.5 * UM)
                  .withLimitOfError(6 * UM, 20 * THOU));

  private DemoDials() {}
}
