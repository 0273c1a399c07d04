package rundlauf.planning;

import java.util.ArrayList;
import java.util.List;
import rundlauf.cutting.Operation;

/**
 * A way of taking a feature's width.
 *
 * @param radial width of one pass [m]
 * @param wide passes side by side, the way in included
 */
record Way(Operation operation, double radial, int wide) {
  /** Widths of a side pass, over the diameter; our choice. */
  private static final double[] FRACTIONS = {0.1, 0.25, 0.5, 1};

  /** Lengths closer than this, relatively, are the same. */
  private static final double ROUNDING = 1e-6;

  /** The ways of a feature, climb milling first. */
  static List<Way> of(JobTask task, double diameter) {
    Way slot = new Way(Operation.SLOT, diameter, 1);
    return switch (task.feature()) {
      case ENGRAVE -> List.of(slot);
      case SLOT, POCKET -> {
        double rest = task.width().orElse(diameter) - diameter;
        yield rest <= CutterChecks.SAME_WIDTH * diameter ? List.of(slot) : pocket(rest, diameter);
      }
      case PROFILE ->
          task.width().isPresent()
              ? beside(task.width().getAsDouble(), diameter, 0)
              : List.of(slot);
      case DRILL -> List.of();
    };
  }

  private static List<Way> pocket(double rest, double diameter) {
    List<Way> all = new ArrayList<>(beside(rest, diameter, 1));
    all.add(new Way(Operation.SLOT, diameter, 1 + passes(rest, diameter)));
    return all;
  }

  /** Equal side passes, climb and conventional. */
  private static List<Way> beside(double stock, double diameter, int wayIn) {
    List<Way> all = new ArrayList<>();
    for (Operation operation : List.of(Operation.SIDE_DOWN, Operation.SIDE_UP)) {
      int before = 0;
      for (double fraction : FRACTIONS) {
        int passes = passes(stock, fraction * diameter);
        if (passes != before) {
          all.add(new Way(operation, stock / passes, wayIn + passes));
        }
        before = passes;
      }
    }
    return all;
  }

  private static int passes(double stock, double most) {
    return (int) Math.ceil(stock / most * (1 - ROUNDING));
  }
}
