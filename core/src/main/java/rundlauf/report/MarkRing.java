package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/**
 * The nose seen from the tool's side with its marks alone.
 *
 * @param id unique in its report
 * @param summary what is seen in it
 * @param clockwise whether forward is clockwise, seen so
 * @param angle how angles are printed
 * @param marks the spindle's first
 */
public record MarkRing(
    String id, Saying summary, boolean clockwise, Scale angle, List<ClockingDial.Mark> marks) {
  public MarkRing {
    marks = List.copyOf(marks);
  }
}
