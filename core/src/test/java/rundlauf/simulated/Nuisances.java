package rundlauf.simulated;

/**
 * What goes wrong between a surface and a written number; each alone or together.
 *
 * @param scatter sd of a reading [m]
 * @param angleError half-width of how far an angle is off [rad], rectangular, new at each reading
 * @param retrace backlash of the dial: its width [m]
 * @param stick the needle stays until it is this far off, then jumps [m]
 * @param drift added from each reading to the next [m]
 * @param digitPreference probability that a reading goes to the favoured grid instead
 * @param favoured step of that grid [m]
 * @param slipAt index of the reading from which on the dial has slipped; negative: none
 * @param slip how far it slips [m]
 * @param limitOfError twice the amplitude of a smooth error of the dial over its travel [m]; where
 *     on it the trial begins is drawn once for a trial
 * @param errorWave its wavelength in travel [m]
 */
public record Nuisances(
    double scatter,
    double angleError,
    double retrace,
    double stick,
    double drift,
    double digitPreference,
    double favoured,
    int slipAt,
    double slip,
    double limitOfError,
    double errorWave) {

  /** None of them. */
  public static Nuisances clean() {
    return new Nuisances(0, 0, 0, 0, 0, 0, 0, -1, 0, 0, 1);
  }

  public Nuisances withScatter(double sd) {
    return new Nuisances(
        sd,
        angleError,
        retrace,
        stick,
        drift,
        digitPreference,
        favoured,
        slipAt,
        slip,
        limitOfError,
        errorWave);
  }

  public Nuisances withAngleError(double halfWidth) {
    return new Nuisances(
        scatter,
        halfWidth,
        retrace,
        stick,
        drift,
        digitPreference,
        favoured,
        slipAt,
        slip,
        limitOfError,
        errorWave);
  }

  public Nuisances withRetrace(double width) {
    return new Nuisances(
        scatter,
        angleError,
        width,
        stick,
        drift,
        digitPreference,
        favoured,
        slipAt,
        slip,
        limitOfError,
        errorWave);
  }

  public Nuisances withStick(double threshold) {
    return new Nuisances(
        scatter,
        angleError,
        retrace,
        threshold,
        drift,
        digitPreference,
        favoured,
        slipAt,
        slip,
        limitOfError,
        errorWave);
  }

  public Nuisances withDrift(double perReading) {
    return new Nuisances(
        scatter,
        angleError,
        retrace,
        stick,
        perReading,
        digitPreference,
        favoured,
        slipAt,
        slip,
        limitOfError,
        errorWave);
  }

  public Nuisances withDigitPreference(double probability, double step) {
    return new Nuisances(
        scatter,
        angleError,
        retrace,
        stick,
        drift,
        probability,
        step,
        slipAt,
        slip,
        limitOfError,
        errorWave);
  }

  public Nuisances withSlip(int from, double by) {
    return new Nuisances(
        scatter,
        angleError,
        retrace,
        stick,
        drift,
        digitPreference,
        favoured,
        from,
        by,
        limitOfError,
        errorWave);
  }

  public Nuisances withLimitOfError(double limit, double wave) {
    return new Nuisances(
        scatter,
        angleError,
        retrace,
        stick,
        drift,
        digitPreference,
        favoured,
        slipAt,
        slip,
        limit,
        wave);
  }
}
