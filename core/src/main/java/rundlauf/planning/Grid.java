package rundlauf.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Cut;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Operation;
import rundlauf.cutting.prediction.CutAsked;
import rundlauf.maths.Samples;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;

/** The cuts that are tried: every way, depth, speed and feed of a plain grid. */
final class Grid {
  private static final int SPEEDS = 6;

  /** Equal passes that the depth is taken in, lightest first; our choice. */
  private static final int[] DEEP = {16, 12, 8, 6, 4, 3, 2, 1};

  /** Shallowest pass, over the diameter; our choice: below it a cut is all rubbing and feed. */
  private static final double SHALLOWEST = 0.02;

  private static final double PAST_THE_END = 1.05;

  private final CutterInUse cutter;
  private final List<Way> ways;
  private final Samples speeds;
  private final List<Samples> feeds;
  private final List<Integer> deep;
  private final double depth;

  private Grid(
      CutterInUse cutter,
      List<Way> ways,
      Samples speeds,
      List<Samples> feeds,
      List<Integer> deep,
      double depth) {
    this.cutter = cutter;
    this.ways = ways;
    this.speeds = speeds;
    this.feeds = feeds;
    this.deep = deep;
    this.depth = depth;
  }

  /**
   * The grid of a job.
   *
   * @param slowest speed that the setup surely turns at [turns/s]
   * @param fastest that setup, cutter, holder and material all bear [turns/s]
   */
  static Grid of(JobTask task, CutterInUse cutter, double slowest, double fastest) {
    double diameter = cutter.diameter().si();
    List<Way> ways = Way.of(task, diameter);
    ChipWindow window = ChipWindow.of(task.material(), cutter);
    return new Grid(
        cutter,
        ways,
        Spacing.between(slowest, fastest, SPEEDS, Unit.RPM),
        ways.stream().map(way -> window.feeds(way, cutter)).toList(),
        deep(task, diameter),
        task.depth());
  }

  private static List<Integer> deep(JobTask task, double diameter) {
    List<Integer> all = new ArrayList<>();
    for (int passes : DEEP) {
      boolean oneOnly = task.feature() == Feature.ENGRAVE; // its width hangs on its depth
      if (passes == 1 || (!oneOnly && task.depth() / passes >= SHALLOWEST * diameter)) {
        all.add(passes);
      }
    }
    return all;
  }

  /** All cuts, the quickest first; of equally quick ones the one that comes first in the grid. */
  List<GridCut> quickestFirst() {
    List<GridCut> all = new ArrayList<>();
    for (int way = 0; way < ways.size(); way++) {
      for (int d = 0; d < deep.size(); d++) {
        for (int s = 0; s < speeds.size(); s++) {
          for (int f = 0; f < feeds.get(way).size(); f++) {
            all.add(at(new GridCut.At(way, s, f, d)));
          }
        }
      }
    }
    all.sort(Comparator.comparingDouble(GridCut::seconds));
    return all;
  }

  /**
   * Every cut that is one step heavier: wider, deeper, fed faster, turned faster; the last speed
   * and the last feed are stepped past by a little, to see what stands there.
   */
  List<GridCut> heavier(GridCut cut) {
    GridCut.At at = cut.at();
    List<GridCut> all = new ArrayList<>();
    wider(at).ifPresent(all::add);
    if (at.deep() + 1 < deep.size()) {
      all.add(at(new GridCut.At(at.way(), at.speed(), at.feed(), at.deep() + 1)));
    }
    all.add(at(new GridCut.At(at.way(), at.speed(), at.feed() + 1, at.deep())));
    all.add(at(new GridCut.At(at.way(), at.speed() + 1, at.feed(), at.deep())));
    return all;
  }

  /** The same cut one step shallower, and one step narrower, where there are such. */
  List<GridCut> lighter(GridCut cut) {
    GridCut.At at = cut.at();
    List<GridCut> all = new ArrayList<>();
    if (at.deep() > 0) {
      all.add(at(new GridCut.At(at.way(), at.speed(), at.feed(), at.deep() - 1)));
    }
    boolean same =
        at.way() > 0 && ways.get(at.way() - 1).operation() == ways.get(at.way()).operation();
    if (same) {
      all.add(at(new GridCut.At(at.way() - 1, at.speed(), at.feed(), at.deep())));
    }
    return all;
  }

  private Optional<GridCut> wider(GridCut.At at) {
    int next = at.way() + 1;
    boolean same =
        next < ways.size() && ways.get(next).operation() == ways.get(at.way()).operation();
    return same
        ? Optional.of(at(new GridCut.At(next, at.speed(), at.feed(), at.deep())))
        : Optional.empty();
  }

  private GridCut at(GridCut.At at) {
    Way way = ways.get(at.way());
    int passes = deep.get(at.deep());
    double speed = step(speeds, at.speed());
    double feed = step(feeds.get(at.way()), at.feed());
    CutAsked cut =
        new CutAsked(
            way.operation(),
            Quantity.exact(speed, Unit.RPM),
            new Cut.FeedPerTooth(Quantity.exact(feed, Unit.MICROMETRE)),
            Quantity.exact(depth / passes, Unit.MILLIMETRE),
            way.operation() == Operation.SLOT
                ? cutter.diameter()
                : Quantity.exact(way.radial(), Unit.MILLIMETRE));
    double seconds = passes * way.wide() / (speed * cutter.teeth() * feed);
    return new GridCut(cut, new SetupPlan.Passes(passes, way.wide()), seconds, at);
  }

  /** A value of the list, or one just past its end. */
  private static double step(Samples values, int at) {
    int last = values.size() - 1;
    return at <= last ? values.get(at) : values.get(last) * PAST_THE_END;
  }
}
