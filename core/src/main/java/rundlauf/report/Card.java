package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/**
 * What to do at the machine, in large type: made to be printed on a page of its own and taken
 * there.
 *
 * @param id unique in its report
 * @param ring where the marks stand
 * @param lines what to set and what to expect
 * @param notes what it rests on
 */
public record Card(String id, Saying heading, MarkRing ring, List<Line> lines, List<Saying> notes)
    implements Block {
  public Card {
    lines = List.copyOf(lines);
    notes = List.copyOf(notes);
  }

  /** A line of a card: what it tells, and what it says. */
  public record Line(Saying label, Cell value) {}
}
