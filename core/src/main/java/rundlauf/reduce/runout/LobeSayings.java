package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Distributions;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.reduce.runout.Runout.Harmonic;
import rundlauf.reduce.runout.Runout.Station;

/**
 * Whose the lobes are. A form of order k that is the pin's own turns with it: with the pin turned
 * forward by α its harmonic is {@code c · exp(−ikα)}; the spindle's and the dial's stay.
 */
final class LobeSayings {
  /** Chance of ruling out what is true; our choice. */
  private static final double CHANCE = 0.01;

  /** Less turning of the lobes than this is no turning; our choice. */
  private static final double TURNED = Math.toRadians(30);

  /** A ball's ovality under this is not worth a line [m]; our choice. */
  private static final double WORTH = 0.1e-6;

  private record Seen(double a, double b, double u, double clock) {}

  private LobeSayings() {}

  static List<Saying> of(RunoutReadings trial, List<Station> stations) {
    List<Saying> sayings = new ArrayList<>();
    for (int k = 0; k < stations.size(); k++) {
      Station station = stations.get(k);
      for (Harmonic harmonic : station.harmonics()) {
        if (harmonic.amplitude().known() && harmonic.highSpot().known()) {
          sayings.add(named(station, harmonic, stations, trial, "stations[" + k + "].roundness"));
        }
      }
      ball(trial, station, "stations[" + k + "].roundness").ifPresent(sayings::add);
      angles(trial, station, "stations[" + k + "].asynchronous").ifPresent(sayings::add);
    }
    return sayings;
  }

  private static Saying named(
      Station station, Harmonic harmonic, List<Station> all, RunoutReadings trial, String about) {
    int order = harmonic.order();
    List<Seen> seen = new ArrayList<>();
    for (Station other : all) {
      if (other.sweep().station().equals(station.sweep().station())) {
        other.harmonics().stream()
            .filter(h -> h.order() == order && h.highSpot().known())
            .forEach(h -> seen.add(seen(h, other.sweep(), trial.angleLimit())));
      }
    }
    return Saying.of(
        verdict(seen, order),
        about,
        Arg.of(order),
        Arg.of(Math.rint(2 * harmonic.amplitude().value() * 1e7) / 1e7, Unit.MICROMETRE),
        Arg.of(Math.PI / order, Unit.DEGREE));
  }

  private static Seen seen(Harmonic h, RunoutReadings.Sweep sweep, double angleLimit) {
    double size = h.amplitude().value();
    double phase = h.order() * h.highSpot().value();
    double set = size * h.order() * angleLimit / Math.sqrt(3);
    double u = Math.hypot(h.amplitude().estimate().orElseThrow().u(), set);
    return new Seen(size * Math.cos(phase), size * Math.sin(phase), u, sweep.shank().orElse(0));
  }

  private static String verdict(List<Seen> seen, int order) {
    double first = seen.get(0).clock();
    boolean turned =
        seen.stream()
            .anyMatch(
                s ->
                    Math.abs(Math.IEEEremainder(order * (s.clock() - first), 2 * Math.PI))
                        > TURNED);
    if (!turned) {
      return "lobes-found";
    }
    boolean follows = bears(seen, order);
    boolean stays = bears(seen, 0);
    if (follows == stays) {
      return "lobes-not-told";
    }
    return follows ? "lobes-are-the-pins" : "lobes-are-not-the-pins";
  }

  /** Whether all are one vector once each is turned forward by {@code order} times its clock. */
  private static boolean bears(List<Seen> seen, int order) {
    double weight = 0;
    double meanA = 0;
    double meanB = 0;
    for (Seen s : seen) {
      double w = 1 / (s.u() * s.u());
      weight += w;
      meanA += w * turnedA(s, order);
      meanB += w * turnedB(s, order);
    }
    double squares = 0;
    for (Seen s : seen) {
      double off =
          Math.hypot(turnedA(s, order) - meanA / weight, turnedB(s, order) - meanB / weight);
      squares += off * off / (s.u() * s.u());
    }
    return Distributions.chiSquareTail(squares, 2 * (seen.size() - 1.0)) > CHANCE;
  }

  private static double turnedA(Seen s, int order) {
    return s.a() * Math.cos(order * s.clock()) - s.b() * Math.sin(order * s.clock());
  }

  private static double turnedB(Seen s, int order) {
    return s.a() * Math.sin(order * s.clock()) + s.b() * Math.cos(order * s.clock());
  }

  private static Optional<Saying> ball(RunoutReadings trial, Station station, String about) {
    boolean oval = station.orders().contains(2);
    double effect =
        oval ? Lobing.tipFactor(trial) * Math.pow(station.eccentricity().value(), 2) : 0;
    return effect < WORTH
        ? Optional.empty()
        : Optional.of(
            Saying.of(
                "ball-tip-taken-out",
                about,
                Arg.of(Math.rint(2 * effect * 1e7) / 1e7, Unit.MICROMETRE)));
  }

  private static Optional<Saying> angles(RunoutReadings trial, Station station, String about) {
    if (!station.form().asynchronous().known()) {
      return Optional.empty();
    }
    double feigned = 2 * station.eccentricity().value() * trial.angleLimit();
    return 2 * feigned < station.form().asynchronous().value()
        ? Optional.empty()
        : Optional.of(
            Saying.of(
                "asynchronous-from-angles",
                about,
                Arg.of(Math.rint(feigned * 1e7) / 1e7, Unit.MICROMETRE)));
  }
}
