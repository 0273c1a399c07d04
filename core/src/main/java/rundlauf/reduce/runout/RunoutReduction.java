package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.reduce.runout.Runout.NextClamping;
import rundlauf.reduce.runout.Runout.Station;

/** Runout readings in, figures out. */
public final class RunoutReduction {
  /** Three unknowns (mean, cos, sin) and one reading left to judge them by. */
  private static final int FEWEST_READINGS = 4;

  private static final int FEWEST_POSITIONS = 3;

  private RunoutReduction() {}

  /**
   * Eccentricity, swing, high spot and harmonics of every sweep; the shank's axis over its
   * stations; what the next clamping will be.
   *
   * <p>Each sweep is fitted by {@code y(θ) = a0 + Σ a_k cos kθ + b_k sin kθ} with readings taken as
   * rounded ({@link rundlauf.maths.CoarseScale}); wrongly set angles, the dial's limit of error,
   * retrace and plunger angle are causes of their own. The axis {@code E(z) = E0 + T z} is fitted
   * by weighted least squares over the stations of a clamping.
   *
   * @param trial sweeps of n ≥ 4 readings [m] over 3 positions or more [rad], or swings read by eye
   * @param draws seed and number of draws
   * @param work told of each sweep done
   * @return figures in SI with 95 % intervals: of the fitted quantities coverage intervals, of
   *     {@code nextClamping} a prediction interval
   * @throws Refused when a sweep has too few readings or positions
   * @see "docs/methods/runout.md, docs/methods/coarse-scale.md"
   */
  public static Runout reduce(RunoutReadings trial, Draws draws, Work work) {
    List<Station> stations = new ArrayList<>();
    for (int k = 0; k < trial.sweeps().size(); k++) {
      work.check();
      stations.add(station(trial, k, draws));
      work.step(k + 1, trial.sweeps().size());
    }
    Map<Integer, List<Station>> clampings = AxisFit.byClamping(stations);
    List<AxisFit> fits =
        clampings.values().stream().filter(AxisFit::possible).map(AxisFit::of).toList();
    var axis = AxisReduction.reduce(trial, fits, draws);
    PartsReduction parts = PartsReduction.of(trial, stations, draws);
    ClampingScatter scatter = parts.scatter(scatter(trial, clampings, fits, draws));
    NextClamping next = nextClamping(trial, clampings, fits, scatter, draws);
    List<Saying> cautions = RunoutCautions.of(trial, fits);
    List<Saying> advice = new ArrayList<>(RunoutAdvice.of(trial, stations, axis, scatter, next));
    advice.addAll(parts.advice());
    advice.addAll(LobeSayings.of(trial, stations));
    return new Runout(
        trial.head(),
        stations,
        axis,
        parts.figure(scatter),
        next,
        parts.parts(),
        parts.best(),
        cautions,
        advice);
  }

  private static Station station(RunoutReadings trial, int k, Draws draws) {
    RunoutReadings.Sweep sweep = trial.sweeps().get(k);
    String record = trial.head().name() + "/" + name(sweep);
    String about = "stations[" + k + "]";
    if (sweep.swing().isPresent()) {
      return StationReduction.swing(sweep, trial, record, about);
    }
    int positions = Harmonics.distinct(sweep.angle());
    if (sweep.reading().size() < FEWEST_READINGS || positions < FEWEST_POSITIONS) {
      throw Refused.at(
          new Place(trial.head().file(), sweep.line(), 0, "readings"),
          "runout-too-few-readings",
          Arg.of(sweep.reading().size()),
          Arg.of(positions));
    }
    return StationReduction.reduce(sweep, trial, record, about, draws);
  }

  /**
   * Names a sweep by what it is, not by where it stands: rows in another order give the same
   * digits.
   */
  private static String name(RunoutReadings.Sweep sweep) {
    StringBuilder name = new StringBuilder("clamping " + sweep.clamping());
    sweep.station().ifPresent(z -> name.append(" station ").append(Unit.MILLIMETRE.fromSi(z)));
    sweep.collet().ifPresent(c -> name.append(" collet ").append(Unit.DEGREE.fromSi(c)));
    sweep.shank().ifPresent(c -> name.append(" shank ").append(Unit.DEGREE.fromSi(c)));
    return name.toString();
  }

  /**
   * From the height at which most clampings were read: the edges where axes are had, else a
   * station.
   */
  private static ClampingScatter scatter(
      RunoutReadings trial,
      Map<Integer, List<Station>> clampings,
      List<AxisFit> fits,
      Draws draws) {
    List<DrawnVector> atStation = outermost(clampings);
    List<DrawnVector> chosen = atStation;
    if (trial.tip().isPresent() && fits.size() >= atStation.size()) {
      double height = trial.tip().get().si();
      chosen = fits.stream().map(f -> f.at(height)).toList();
    }
    return ClampingScatter.of(chosen, trial.head().name(), draws);
  }

  private static NextClamping nextClamping(
      RunoutReadings trial,
      Map<Integer, List<Station>> clampings,
      List<AxisFit> fits,
      ClampingScatter scatter,
      Draws draws) {
    String file = trial.head().name();
    List<DrawnVector> atStation = outermost(clampings);
    var tip = fits.isEmpty() ? null : AxisReduction.atTip(trial, fits, draws).orElse(null);
    if (tip != null) {
      double at = trial.tip().orElseThrow().si();
      var clamped = NextClampingReduction.clamped(fits, at, atStation);
      return NextClampingReduction.reduce(
          tip, scatter, file, OptionalDouble.of(at), clamped, draws);
    }
    if (atStation.isEmpty()) {
      return SwingClampings.next(trial);
    }
    OptionalDouble height = height(clampings);
    var clamped =
        fits.isEmpty()
            ? new Clamped(atStation, List.of(), List.of())
            : NextClampingReduction.clamped(fits, height.orElseThrow(), atStation);
    DrawnVector mean = AxisReduction.mean(atStation);
    return NextClampingReduction.reduce(mean, scatter, file, height, clamped, draws);
  }

  /** The station read in most clampings, the outermost of several. */
  private static OptionalDouble height(Map<Integer, List<Station>> clampings) {
    List<Double> heights =
        clampings.values().stream()
            .flatMap(List::stream)
            .flatMapToDouble(s -> s.sweep().station().stream())
            .boxed()
            .toList();
    return heights.stream()
        .max(
            Comparator.<Double>comparingLong(h -> heights.stream().filter(h::equals).count())
                .thenComparing(Comparator.naturalOrder()))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /**
   * One vector a clamping, at that station; where no height is given, each clamping's first sweep.
   */
  private static List<DrawnVector> outermost(Map<Integer, List<Station>> clampings) {
    OptionalDouble height = height(clampings);
    List<DrawnVector> vectors = new ArrayList<>();
    for (List<Station> stations : clampings.values()) {
      stations.stream()
          .filter(s -> s.sweep().station().equals(height))
          .findFirst()
          .ifPresent(s -> vectors.add(s.vector().orElseThrow()));
    }
    return vectors;
  }
}
