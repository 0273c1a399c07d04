package rundlauf.reduce.runout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.Reduced;

/**
 * What a runout trial gives.
 *
 * @param stations in the order of the readings
 * @param axis tilt, and the shank's axis at the height of the edges
 * @param clampingScatter sd of one component of E between clampings [m]
 * @param nextClamping what the next clamping will be
 * @param parts what spindle, collet and shank add, at each station
 * @param bestClocking how to set collet and shank against the spindle
 * @param verdicts what norms say to it; none where it stands alone
 */
public record Runout(
    TrialHead head,
    List<Station> stations,
    Axis axis,
    Figure clampingScatter,
    NextClamping nextClamping,
    List<Part> parts,
    BestClocking bestClocking,
    List<NormVerdict> verdicts,
    List<Saying> cautions,
    List<Saying> advice)
    implements Reduced {

  public Runout {
    stations = List.copyOf(stations);
    parts = List.copyOf(parts);
    verdicts = List.copyOf(verdicts);
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  /** Before any norm was asked. */
  public Runout(
      TrialHead head,
      List<Station> stations,
      Axis axis,
      Figure clampingScatter,
      NextClamping nextClamping,
      List<Part> parts,
      BestClocking bestClocking,
      List<Saying> cautions,
      List<Saying> advice) {
    this(
        head,
        stations,
        axis,
        clampingScatter,
        nextClamping,
        parts,
        bestClocking,
        List.of(),
        cautions,
        advice);
  }

  /** Where the parts were not looked for. */
  public Runout(
      TrialHead head,
      List<Station> stations,
      Axis axis,
      Figure clampingScatter,
      NextClamping nextClamping,
      List<Saying> cautions,
      List<Saying> advice) {
    this(
        head,
        stations,
        axis,
        clampingScatter,
        nextClamping,
        List.of(),
        ClockingReduction.missing(Saying.of("parts-not-told-apart", "bestClocking")),
        cautions,
        advice);
  }

  /**
   * What one part adds at a station.
   *
   * @param name spindle, collet or shank; of parts that cannot be told apart all, joined by +
   * @param station height [m]; empty when none is given
   * @param eccentricity of the part alone [m]
   * @param highSpot where it would read highest alone with its clock angle 0 [rad]
   */
  public record Part(String name, OptionalDouble station, Figure eccentricity, Figure highSpot) {}

  /**
   * One sweep reduced.
   *
   * @param sweep the readings it came from
   * @param swing raw largest less smallest reading
   * @param tir swing of the fitted curve over the whole turn
   * @param eccentricity amplitude of harmonic 1
   * @param highSpot spindle angle at which the reading is highest [rad]
   * @param harmonics of order 2 and up that the readings bear
   * @param scatter sd of a reading about the fit
   * @param curve the fitted curve's coefficients a0, a1, b1, a2, b2, … for drawing it
   * @param orders the harmonics fitted, 1 first
   * @param vector E = a1 + i b1; empty when only a swing was read
   * @param form roundness, and motion in step and out of step with the turning
   */
  public record Station(
      RunoutReadings.Sweep sweep,
      Figure swing,
      Figure tir,
      Figure eccentricity,
      Figure highSpot,
      List<Harmonic> harmonics,
      Figure scatter,
      Samples curve,
      List<Integer> orders,
      Optional<DrawnVector> vector,
      Form form) {
    public Station {
      harmonics = List.copyOf(harmonics);
      orders = List.copyOf(orders);
    }

    /** Where nothing is told of the form. */
    public Station(
        RunoutReadings.Sweep sweep,
        Figure swing,
        Figure tir,
        Figure eccentricity,
        Figure highSpot,
        List<Harmonic> harmonics,
        Figure scatter,
        Samples curve,
        List<Integer> orders,
        Optional<DrawnVector> vector) {
      this(
          sweep,
          swing,
          tir,
          eccentricity,
          highSpot,
          harmonics,
          scatter,
          curve,
          orders,
          vector,
          Form.missing(Saying.of("form-not-told", "")));
    }
  }

  /** One harmonic of the curve: amplitude [m] and where it is highest [rad]. */
  public record Harmonic(int order, Figure amplitude, Figure highSpot) {}

  /**
   * The shank's axis.
   *
   * @param tilt m/m
   * @param tiltHighSpot where it leans to [rad]
   * @param tip the axis at the height of the edges
   */
  public record Axis(Figure tilt, Figure tiltHighSpot, Tip tip) {}

  /** The axis at {@code distance} [m] from the nut's face; empty when not given. */
  public record Tip(OptionalDouble distance, Figure tir, Figure eccentricity, Figure highSpot) {}

  /**
   * Mean and scatter over clampings, put forward to the next one, at height {@code at} [m] (empty
   * when not given).
   *
   * @param clamped what it was taken from
   */
  public record NextClamping(OptionalDouble at, Figure eccentricity, Figure tir, Clamped clamped) {
    public NextClamping(OptionalDouble at, Figure eccentricity, Figure tir) {
      this(at, eccentricity, tir, new Clamped(List.of(), List.of(), List.of()));
    }
  }

  /** The station that was read last. */
  public Station last() {
    return stations.get(stations.size() - 1);
  }

  @Override
  public Map<String, Figure> figures() {
    return RunoutPaths.of(this);
  }

  @Override
  public Runout withCautions(List<Saying> more) {
    return with(verdicts, Reduced.joined(more, cautions));
  }

  /** The same with what the norms say to it. */
  public Runout withVerdicts(List<NormVerdict> reached) {
    return with(reached, cautions);
  }

  private Runout with(List<NormVerdict> reached, List<Saying> said) {
    return new Runout(
        head,
        stations,
        axis,
        clampingScatter,
        nextClamping,
        parts,
        bestClocking,
        reached,
        said,
        advice);
  }
}
