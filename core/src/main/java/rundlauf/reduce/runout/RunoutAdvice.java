package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.reduce.runout.Runout.Axis;
import rundlauf.reduce.runout.Runout.NextClamping;
import rundlauf.reduce.runout.Runout.Station;

/** What would make the figures better, and what limits them. */
final class RunoutAdvice {
  /** Fewer clampings say little of their scatter: three leave four degrees of freedom. */
  private static final int CLAMPINGS = 3;

  private static final int POSITIONS = 8;

  private RunoutAdvice() {}

  static List<Saying> of(
      RunoutReadings trial,
      List<Station> stations,
      Axis axis,
      ClampingScatter scatter,
      NextClamping next) {
    List<Saying> advice = new ArrayList<>();
    limits(advice, axis.tip().tir().known() ? axis.tip().tir() : stations.get(0).tir(), stations);
    if (trial.indicator().limitOfError().isEmpty()) {
      advice.add(Saying.of("limit-of-error-not-stated", "indicator"));
    }
    trial.indicator().fromNorm().ifPresent(advice::add);
    positions(advice, trial);
    if (trial.sweeps().stream().noneMatch(RunoutCautions::closed)
        && trial.sweeps().stream().anyMatch(s -> s.swing().isEmpty())) {
      advice.add(Saying.of("no-closing-reading", "stations"));
    }
    if (!axis.tilt().known()) {
      advice.add(Saying.of("one-station-only", "axis"));
    } else if (trial.tip().isEmpty()) {
      advice.add(Saying.of("tip-height-not-given", "axis.tip"));
    }
    if (scatter.clampings() > 0) {
      clampings(advice, scatter);
      clamped(advice, trial, axis, next);
    }
    return advice;
  }

  private static void clampings(List<Saying> advice, ClampingScatter scatter) {
    if (!scatter.measured()) {
      advice.add(
          Saying.of(
              "clamping-scatter-assumed",
              "nextClamping",
              Arg.of(Math.rint(ClampingScatter.ASSUMED * 1e7) / 1e7, Unit.MICROMETRE)));
    } else if (scatter.clampings() > 1 && scatter.dof() < 2 * (CLAMPINGS - 1)) {
      advice.add(Saying.of("more-clampings", "nextClamping", Arg.of(scatter.clampings())));
    }
  }

  private static void clamped(
      List<Saying> advice, RunoutReadings trial, Axis axis, NextClamping next) {
    if (next.eccentricity().known() && !axis.tip().tir().known()) {
      advice.add(Saying.of("next-clamping-at-station", "nextClamping"));
    }
    if (differentClocks(trial)) {
      advice.add(Saying.of("clocked-clampings-left-out", "axis"));
    }
  }

  private static void positions(List<Saying> advice, RunoutReadings trial) {
    for (int k = 0; k < trial.sweeps().size(); k++) {
      Samples angles = trial.sweeps().get(k).angle();
      if (angles.size() == 0) {
        continue;
      }
      int positions = Harmonics.distinct(angles);
      boolean even = Harmonics.equallySpaced(angles);
      String about = "stations[" + k + "]";
      if (even && (positions == 4 || positions == 6)) {
        advice.add(Saying.of("lobes-unseen", about, Arg.of(positions), Arg.of(positions - 1)));
      } else if (positions < POSITIONS) {
        advice.add(Saying.of("more-positions", about, Arg.of(positions)));
      }
    }
  }

  /** What dominates the figure, and what would halve its interval. */
  private static void limits(List<Saying> advice, Figure figure, List<Station> stations) {
    List<Figure.Share> shares = figure.budget();
    double total = shares.stream().mapToDouble(s -> s.u() * s.u()).sum();
    if (shares.isEmpty() || total == 0) {
      return;
    }
    Figure.Share first = shares.get(0);
    String part = first.cause().part();
    String about = stations.size() > 1 ? "axis.tip.tir" : "stations[0].tir";
    advice.add(
        Saying.of(
            "limited-by-" + part,
            about,
            Arg.of(Math.rint(100 * first.u() * first.u() / total) / 100, Unit.PERCENT)));
  }

  private static boolean differentClocks(RunoutReadings trial) {
    var first = trial.sweeps().get(0);
    return trial.sweeps().stream()
        .anyMatch(s -> !s.collet().equals(first.collet()) || !s.shank().equals(first.shank()));
  }
}
