package rundlauf.compare;

import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.quantity.Figure;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;

/**
 * A figure of a result by what it is of, where its place in a list differs from trial to trial: a
 * part of a spindle, a joint of a nose.
 */
final class NamedFigure {
  static final String ASYNCHRONOUS = "stations.asynchronous";

  private NamedFigure() {}

  /** Empty where the result has no such figure. */
  static Optional<Figure> of(Reduced result, String path) {
    String[] words = path.split("\\.", -1);
    if (result instanceof Runout runout && words[0].equals("parts")) {
      return part(runout, words[1]);
    }
    if (result instanceof Runout runout && path.equals(ASYNCHRONOUS)) {
      return turns(runout);
    }
    if (result instanceof SideLoad load && words[0].equals("shares")) {
      return joint(load, words[1]);
    }
    return Optional.ofNullable(result.figures().get(path));
  }

  /** Where a trial's parts are compared. */
  static OptionalDouble station(Runout runout) {
    return runout.bestClocking().station();
  }

  private static Optional<Figure> part(Runout runout, String name) {
    return runout.parts().stream()
        .filter(p -> p.name().equals(name) && p.station().equals(station(runout)))
        .map(Runout.Part::eccentricity)
        .findFirst();
  }

  /** Of the first station that was read over several turns. */
  private static Optional<Figure> turns(Runout runout) {
    return severalTurns(runout).map(s -> s.form().asynchronous());
  }

  /** Where that station is. */
  static OptionalDouble turned(Runout runout) {
    return severalTurns(runout).map(s -> s.sweep().station()).orElse(OptionalDouble.empty());
  }

  private static Optional<Runout.Station> severalTurns(Runout runout) {
    return runout.stations().stream().filter(s -> s.form().asynchronous().known()).findFirst();
  }

  /** A bound is no figure to compare. */
  private static Optional<Figure> joint(SideLoad load, String name) {
    return load.compliances().shares().entries().stream()
        .filter(s -> s.joint().equals(name) && s.bound().isEmpty())
        .map(s -> s.compliance())
        .findFirst();
  }
}
