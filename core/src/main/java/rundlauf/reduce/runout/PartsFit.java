package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.DrawnVector.Effect;

/**
 * The parts at one height, by complex least squares over its clampings.
 *
 * @param clampings that were read there
 * @param scatter between them: what the parts leave unexplained, or assumed where nothing is left
 * @param columns E of each column of the fit, with the scatter of the clampings as causes
 */
record PartsFit(
    ClockedClampings clampings,
    PartsDesign design,
    ClampingScatter scatter,
    List<DrawnVector> columns) {
  PartsFit {
    columns = List.copyOf(columns);
  }

  /**
   * Fits them.
   *
   * @param file begins the ids of the clampings' causes
   */
  static PartsFit of(ClockedClampings clampings, String file, Draws draws) {
    PartsDesign design = PartsDesign.of(clampings.clocks());
    List<Samples> weights = design.weights();
    List<DrawnVector> read = clampings.vectors();
    ClampingScatter scatter = scatter(read, design, weights, file, draws);
    List<DrawnVector> scattered = new ArrayList<>();
    for (int j = 0; j < read.size(); j++) {
      String record = file + "/clamping " + clampings.numbers().get(j);
      scattered.add(scattered(read.get(j), scatter.draws(), record, draws));
    }
    return new PartsFit(clampings, design, scatter, combined(scattered, weights));
  }

  private static List<DrawnVector> combined(List<DrawnVector> vectors, List<Samples> weights) {
    List<DrawnVector> columns = new ArrayList<>();
    for (Samples weight : weights) {
      DrawnVector sum = vectors.get(0).times(weight.get(0), weight.get(1));
      for (int j = 1; j < vectors.size(); j++) {
        sum = sum.plus(vectors.get(j).times(weight.get(2 * j), weight.get(2 * j + 1)), 1);
      }
      columns.add(sum);
    }
    return columns;
  }

  private static ClampingScatter scatter(
      List<DrawnVector> read, PartsDesign design, List<Samples> weights, String file, Draws draws) {
    List<DrawnVector> fitted = combined(read, weights);
    List<DrawnVector> off = new ArrayList<>();
    for (int j = 0; j < read.size(); j++) {
      DrawnVector left = read.get(j);
      for (int k = 0; k < fitted.size(); k++) {
        double turn = design.turns().get(k).get(j);
        left = left.plus(fitted.get(k).times(Math.cos(turn), -Math.sin(turn)), -1);
      }
      off.add(left);
    }
    return ClampingScatter.left(off, design.spare(), file, draws);
  }

  /** One clamping pushed along and across its own E, as clamping anew would. */
  private static DrawnVector scattered(DrawnVector read, Samples sds, String record, Draws draws) {
    double along = read.direction();
    return pushed(
        pushed(read, sds, Cause.normal(record, "clamping-along"), along, draws),
        sds,
        Cause.normal(record, "clamping-across"),
        along + Math.PI / 2,
        draws);
  }

  private static DrawnVector pushed(
      DrawnVector vector, Samples sds, Cause cause, double direction, Draws draws) {
    Samples standard = cause.draws(draws);
    double cos = Math.cos(direction);
    double sin = Math.sin(direction);
    Samples push = Samples.generate(sds.size(), i -> sds.get(i) * standard.get(i));
    Effect effect = new Effect(sds.mean() * cos, sds.mean() * sin);
    DrawnVector by =
        new DrawnVector(push.map(x -> x * cos), push.map(x -> x * sin), Map.of(cause, effect));
    return vector.plus(by, 1);
  }

  /** E of the whole with the parts standing so. */
  DrawnVector at(Clock clock) {
    DrawnVector sum = turned(0, clock);
    for (int k = 1; k < columns.size(); k++) {
      sum = sum.plus(turned(k, clock), 1);
    }
    return sum;
  }

  /** What body {@code k} adds with the parts standing so. */
  DrawnVector turned(int k, Clock clock) {
    // Where nothing can be told apart there may be two columns: the spindle's and the collet's.
    double turn =
        design.bodies().size() > k ? design.bodies().get(k).turned(clock) : clock.collet();
    return columns.get(k).times(Math.cos(turn), -Math.sin(turn));
  }

  /** E of body {@code k}; of one alone, that of the whole as first clamped. */
  DrawnVector body(int k) {
    return design.bodies().size() == 1 ? at(design.clocks().get(0)) : columns.get(k);
  }
}
