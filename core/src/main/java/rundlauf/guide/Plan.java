package rundlauf.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The steps of a trial from its first reading to its last.
 *
 * @param steps in the order they are taken; none: nothing was intended
 * @param more a reading beyond them
 */
record Plan(List<Step> steps, Step more) {
  Plan {
    steps = List.copyOf(steps);
  }

  /** The steps that no typed row answers, and how many are answered. */
  Progress progress(List<Map<String, String>> typed) {
    List<Map<String, String>> left = new ArrayList<>(typed);
    List<Step> open = new ArrayList<>();
    int done = 0;
    for (Step step : steps) {
      int row = answering(step, left);
      if (row >= 0) {
        left.remove(row);
        done++;
      } else {
        open.add(step);
      }
    }
    return new Progress(open, done, left.size());
  }

  /**
   * How far a plan is.
   *
   * @param open the steps that no row answers, in the order they are taken
   * @param beside typed rows that answer no step
   */
  record Progress(List<Step> open, int done, int beside) {
    Progress {
      open = List.copyOf(open);
    }
  }

  private static int answering(Step step, List<Map<String, String>> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (answers(step, rows.get(i))) {
        return i;
      }
    }
    return -1;
  }

  /** Whether a row holds what a step gives. */
  static boolean answers(Step step, Map<String, String> row) {
    return step.given().stream()
        .allMatch(
            g -> row.containsKey(g.column()) && TypedRows.same(row.get(g.column()), g.text()));
  }
}
