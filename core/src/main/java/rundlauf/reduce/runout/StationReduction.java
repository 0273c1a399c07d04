package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Polar;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.RunoutReadings;
import rundlauf.reduce.runout.Runout.Harmonic;
import rundlauf.reduce.runout.Runout.Station;

/** One sweep reduced. */
final class StationReduction {
  private StationReduction() {}

  /**
   * A sweep of angles and readings.
   *
   * @param record begins the ids of the sweep's own causes
   */
  static Station reduce(
      RunoutReadings.Sweep sweep, RunoutReadings trial, String record, String about, Draws draws) {
    StationFit fit = StationFit.of(sweep, trial, record + "/readings", draws);
    double span = sweep.reading().max() - sweep.reading().min();
    DrawnVector vector = StationCauses.vector(fit, trial.indicator(), record, span, draws);
    Drawn eccentricity = Polar.magnitude(vector, Unit.MICROMETRE);
    Figure tir =
        fit.orders().size() == 1
            ? eccentricity.times(2)
            : curveSwing(fit, vector, trial.indicator(), span, draws);
    return new Station(
        sweep,
        Measured.exact(span, Unit.MICROMETRE),
        tir,
        eccentricity,
        Polar.angle(vector, about),
        harmonics(fit, about),
        Drawn.of(Unit.MICROMETRE, fit.posterior().sigma(), Map.of()),
        Samples.of(fit.posterior().coefficients().stream().map(Samples::mean).toList()),
        fit.orders(),
        Optional.of(vector),
        form(fit, sweep, trial, record, about, eccentricity.value(), draws));
  }

  private static Form form(
      StationFit fit,
      RunoutReadings.Sweep sweep,
      RunoutReadings trial,
      String record,
      String about,
      double eccentricity,
      Draws draws) {
    double span = sweep.reading().max() - sweep.reading().min();
    Optional<Double> radius = trial.gaugeDiameter().stream().mapToObj(d -> d / 2).findFirst();
    Form form =
        RoundnessReduction.of(
            Lobing.of(fit, sweep, trial, record + "/form", draws),
            radius,
            trial.indicator(),
            span,
            record,
            about,
            draws);
    return TurnsReduction.added(form, sweep, trial, eccentricity, record, about, draws);
  }

  /** Swing of a curve of several harmonics: the dial's limit of error acts on it whole. */
  private static Figure curveSwing(
      StationFit fit, DrawnVector vector, IndicatorLimits dial, double span, Draws draws) {
    Samples swings = Curve.swings(fit.orders(), fit.posterior().coefficients());
    double direction = vector.direction();
    Map<Cause, Double> effects = new LinkedHashMap<>();
    vector
        .effects()
        .forEach(
            (cause, e) ->
                effects.put(
                    cause, 2 * (e.a() * Math.cos(direction) + e.b() * Math.sin(direction))));
    if (dial.limitOfError().isPresent()) {
      Cause cause = Cause.rectangular(dial.record(), "limit-of-error");
      double u = dial.limitOfError().get().over(span) / Math.sqrt(3);
      Samples standard = cause.draws(draws);
      Samples read = swings;
      swings = Samples.generate(read.size(), i -> Math.abs(read.get(i) + u * standard.get(i)));
    }
    return Drawn.of(Unit.MICROMETRE, swings, effects);
  }

  private static List<Harmonic> harmonics(StationFit fit, String about) {
    List<Harmonic> harmonics = new ArrayList<>();
    for (int k = 1; k < fit.orders().size(); k++) {
      int order = fit.orders().get(k);
      var vector =
          new DrawnVector(
              fit.posterior().coefficient(1 + 2 * k),
              fit.posterior().coefficient(2 + 2 * k),
              Map.of());
      harmonics.add(
          new Harmonic(
              order,
              Polar.magnitude(vector, Unit.MICROMETRE),
              highSpot(Polar.angle(vector, about + ".harmonics"), order)));
    }
    return harmonics;
  }

  /** Phase of a harmonic over its order: the first angle at which it is highest. */
  private static Figure highSpot(Figure phase, int order) {
    return phase instanceof Drawn drawn
        ? Drawn.through(v -> v[0] / order, Unit.DEGREE, new Draws(0, drawn.weights().size()), drawn)
        : phase;
  }

  /** A swing read by eye: no curve, only its width. */
  static Station swing(
      RunoutReadings.Sweep sweep, RunoutReadings trial, String record, String about) {
    double swing = sweep.swing().orElseThrow();
    Saying why = Saying.of("swing-only", about);
    return new Station(
        sweep,
        Measured.exact(swing, Unit.MICROMETRE),
        SwingReading.tir(swing, trial.indicator(), record),
        new Missing(Unit.MICROMETRE, why),
        new Missing(Unit.DEGREE, why),
        List.of(),
        new Missing(Unit.MICROMETRE, why),
        Samples.of(),
        List.of(),
        Optional.empty(),
        Form.missing(why));
  }
}
