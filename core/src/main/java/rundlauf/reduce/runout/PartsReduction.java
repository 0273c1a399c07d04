package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Polar;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.reduce.runout.Runout.Part;
import rundlauf.reduce.runout.Runout.Station;

/**
 * What spindle, collet and shank each add, and how to set them against each other.
 *
 * @param parts at each station
 * @param best clock angles at the station of most clampings
 * @param fit at that station; empty where no clamping has both a vector and its clock angles
 * @param untold clampings left out since a clock angle is missing
 */
record PartsReduction(
    List<Part> parts, BestClocking best, Optional<PartsFit> fit, List<Integer> untold) {
  PartsReduction {
    parts = List.copyOf(parts);
    untold = List.copyOf(untold);
  }

  /** From the reduced sweeps of a trial. */
  static PartsReduction of(RunoutReadings trial, List<Station> stations, Draws draws) {
    String file = trial.head().name();
    List<ClockedClampings> read = ClockedClampings.byStation(stations);
    if (read.isEmpty()) {
      return without(trial, ClockedClampings.untold(stations));
    }
    ClockedClampings chosen = ClockedClampings.chosen(read);
    List<Part> parts = new ArrayList<>();
    List<PartsFit> fits = read.stream().map(c -> PartsFit.of(c, file, draws)).toList();
    fits.forEach(fit -> parts.addAll(parts(fit, parts.size())));
    PartsFit fit = fits.get(read.indexOf(chosen));
    var best = ClockingReduction.reduce(fit, file, trial.angleLimit(), draws);
    return new PartsReduction(parts, best, Optional.of(fit), ClockedClampings.untold(stations));
  }

  private static PartsReduction without(RunoutReadings trial, List<Integer> untold) {
    Saying why =
        untold.isEmpty()
            ? Saying.of("swing-only", "parts")
            : Saying.of("parts-not-told-apart", "parts");
    List<Part> parts =
        trial.sweeps().stream()
            .map(RunoutReadings.Sweep::station)
            .distinct()
            .map(
                z ->
                    new Part(
                        "spindle+collet+shank",
                        z,
                        new Missing(Unit.MICROMETRE, why),
                        new Missing(Unit.DEGREE, why)))
            .toList();
    return new PartsReduction(parts, ClockingReduction.missing(why), Optional.empty(), untold);
  }

  private static List<Part> parts(PartsFit fit, int before) {
    List<Part> parts = new ArrayList<>();
    for (int k = 0; k < fit.design().bodies().size(); k++) {
      DrawnVector e = fit.body(k);
      parts.add(
          new Part(
              fit.design().bodies().get(k).name(),
              fit.clampings().height(),
              Polar.magnitude(e, Unit.MICROMETRE),
              Polar.angle(e, "parts[" + (before + k) + "].highSpot")));
    }
    return parts;
  }

  /**
   * The scatter between clampings: of those with the first's clock angles, or what the parts leave
   * unexplained where that is told by more clampings.
   */
  ClampingScatter scatter(ClampingScatter own) {
    return left()
        .filter(left -> left.dof() > own.dof())
        .map(left -> left.of(Math.max(1, own.clampings())))
        .orElse(own);
  }

  private Optional<ClampingScatter> left() {
    return fit.map(PartsFit::scatter);
  }

  /** That scatter as a figure. */
  Figure figure(ClampingScatter scatter) {
    boolean allUsed = !scatter.measured() && fit.filter(f -> clampings(f) > 1).isPresent();
    return allUsed
        ? new Missing(Unit.MICROMETRE, allUsed(fit.orElseThrow(), "clampingScatter"))
        : scatter.figure();
  }

  private static Saying allUsed(PartsFit fit, String about) {
    return Saying.of("clampings-all-used", about, Arg.of(clampings(fit)));
  }

  private static int clampings(PartsFit fit) {
    return fit.design().clocks().size();
  }

  /** The clampings that would tell the parts apart, or which part is most to blame. */
  List<Saying> advice() {
    List<Saying> advice = new ArrayList<>();
    untold.forEach(n -> advice.add(Saying.of("clock-not-told", "parts", Arg.of(n))));
    if (fit.isEmpty()) {
      return advice;
    }
    PartsDesign design = fit.get().design();
    if (!design.separated()) {
      advice.add(separating(design));
      return advice;
    }
    if (design.spare() == 0) {
      advice.add(allUsed(fit.get(), "parts"));
    } else if (design.spare() == 1) {
      advice.add(Saying.of("one-clamping-spare", "parts"));
    }
    blamed().ifPresent(name -> advice.add(Saying.of("part-to-blame", "parts", Arg.of(name))));
    return advice;
  }

  private static Saying separating(PartsDesign design) {
    String joined =
        design.bodies().stream()
            .map(PartsDesign.Body::name)
            .filter(name -> name.contains("+"))
            .findFirst()
            .orElseThrow();
    List<Arg> args = new ArrayList<>(List.of(Arg.of(joined)));
    List<Clock> next = NextClocks.after(design);
    for (Clock clock : next) {
      args.add(Arg.of(clock.collet(), Unit.DEGREE));
      args.add(Arg.of(clock.shank(), Unit.DEGREE));
    }
    Arg[] all = args.toArray(Arg[]::new);
    return switch (next.size()) {
      case 1 -> Saying.of("parts-one-more-clamping", "parts", all);
      case 2 -> Saying.of("parts-two-more-clampings", "parts", all);
      default -> Saying.of("parts-three-more-clampings", "parts", all);
    };
  }

  /** The part whose eccentricity lies over all others', by their whole intervals. */
  private Optional<String> blamed() {
    var height = fit.orElseThrow().clampings().height();
    List<Part> here =
        parts.stream()
            .filter(p -> p.station().equals(height))
            .sorted(Comparator.comparingDouble((Part p) -> p.eccentricity().value()).reversed())
            .toList();
    double low = interval(here.get(0).eccentricity()).low();
    boolean over = here.stream().skip(1).allMatch(p -> interval(p.eccentricity()).high() < low);
    return over ? Optional.of(here.get(0).name()) : Optional.empty();
  }

  private static Interval interval(Figure figure) {
    return figure.estimate().orElseThrow().interval();
  }
}
