package rundlauf.cutting.chip;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;

/**
 * The depth of cut parted into equal slices; within a slice the edges keep the radii of its middle.
 *
 * @param count 1 or more
 * @param thickness of one slice [m]
 */
public record Slices(int count, double thickness) {
  /** Widest turn of the edge within a slice [rad]: our choice, by docs/methods/chip.md. */
  private static final double WIDEST_TURN = 0.1;

  /** Fewest slices of an axis that leans: our choice, by docs/methods/chip.md. */
  private static final int FEWEST_LEANING = 6;

  /** Height of the middle of slice {@code i}, from 0 [m]. */
  public double middle(int i) {
    return (i + 0.5) * thickness;
  }

  /** As many as the runout asks for: one where nothing changes with height. */
  public static Slices of(Tool tool, Conditions cut, ToolRunout runout) {
    int count = 1;
    if (runout.eccentricity() > 0 || runout.tilt() > 0) {
      count = turning(tool, cut);
    }
    if (runout.tilt() > 0) {
      count = Math.max(count, FEWEST_LEANING);
    }
    return new Slices(count, cut.axial() / count);
  }

  /** Slices in each of which an edge turns by no more than {@link #WIDEST_TURN}. */
  private static int turning(Tool tool, Conditions cut) {
    return Math.max(1, (int) Math.ceil(Math.abs(tool.lag()) * cut.axial() / WIDEST_TURN));
  }
}
