package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Stream;

/** Takes side-load trials on paper. */
public final class LoadBench {
  private final Stream stream;
  private final Nose nose;
  private final Shank shank;
  private final double scale;

  /** Where friction has left the nose [m]; the middle of a band half a loop wide each side. */
  private double behindFriction;

  private double lastSide;

  private LoadBench(Stream stream, Nose nose, Shank shank, double scale) {
    this.stream = stream;
    this.nose = nose;
    this.shank = shank;
    this.scale = scale;
  }

  /** The trial that {@code seed} gives: same arguments, same readings. */
  public static TakenLoad take(
      long seed, Nose nose, Shank shank, Lever lever, LoadPlan plan, Dial dial) {
    return take(Stream.of(seed, "side-load"), nose, shank, lever, plan, dial);
  }

  /** The trial with the next numbers of {@code stream}. */
  public static TakenLoad take(
      Stream stream, Nose nose, Shank shank, Lever lever, LoadPlan plan, Dial dial) {
    var bench = new LoadBench(stream, nose, shank, lever.trueScale(stream));
    List<TakenLoad.Row> pushes = pushes(plan);
    double along = pushes.get(0).direction();
    double beginning = dial.beginning(stream);
    List<TakenLoad.Row> rows = new ArrayList<>();
    for (List<TakenLoad.Row> setting : settings(pushes)) {
      List<Double> surface = new ArrayList<>();
      for (TakenLoad.Row row : setting) {
        surface.add(bench.surface(row, lever, along));
      }
      List<Long> steps = dial.steps(surface, beginning, stream);
      for (int i = 0; i < setting.size(); i++) {
        TakenLoad.Row r = setting.get(i);
        rows.add(
            new TakenLoad.Row(r.count(), r.direction(), r.falling(), r.zeroed(), steps.get(i)));
      }
    }
    return new TakenLoad(nose, shank, lever, dial, rows);
  }

  private static List<TakenLoad.Row> pushes(LoadPlan plan) {
    List<TakenLoad.Row> rows = new ArrayList<>();
    int zeroed = 1;
    for (int round = 0; round < plan.rounds(); round++) {
      for (double direction : plan.directions()) {
        int before = 0;
        boolean falling = false;
        for (int count : plan.counts()) {
          falling = count < before || falling && count == before;
          rows.add(new TakenLoad.Row(count, direction, falling, zeroed, 0));
          before = count;
        }
        zeroed += plan.zeroAnew() ? 1 : 0;
      }
    }
    return rows;
  }

  private static List<List<TakenLoad.Row>> settings(List<TakenLoad.Row> rows) {
    List<List<TakenLoad.Row>> all = new ArrayList<>();
    for (TakenLoad.Row row : rows) {
      if (all.isEmpty() || all.get(all.size() - 1).get(0).zeroed() != row.zeroed()) {
        all.add(new ArrayList<>());
      }
      all.get(all.size() - 1).add(row);
    }
    return all;
  }

  /** Where the surface stands along the dial under this row's load [m]. */
  private double surface(TakenLoad.Row row, Lever lever, double along) {
    double force = row.count() * lever.newtons() * scale;
    double signed = force * Math.round(Math.cos(row.direction() - along));
    double half = nose.hysteresis() / 2;
    double free = nose.bend(signed);
    behindFriction = Math.max(free - half, Math.min(free + half, behindFriction));
    return behindFriction + shank.compliance() * signed + withinPlay(signed);
  }

  private double withinPlay(double force) {
    if (force != 0) {
      lastSide = Math.signum(force);
      return lastSide * nose.play() / 2;
    }
    double anywhere = 2 * stream.uniform() - 1;
    double lag = lastSide == 0 ? 0 : nose.restLag();
    return nose.play() / 2 * (lag * lastSide + (1 - lag) * anywhere);
  }
}
