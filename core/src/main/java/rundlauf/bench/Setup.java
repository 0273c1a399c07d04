package rundlauf.bench;

import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;

/**
 * A spindle with a way of holding the tool.
 *
 * @param name in the bench
 * @param spindle the name of a spindle of the bench
 * @param holder the name of a holder of the bench
 * @param cutter the name of a cutter of the bench
 * @param stickout from the nut's face to the cutter's tip
 * @param notes as given
 */
public record Setup(
    String name,
    String spindle,
    Optional<String> holder,
    Optional<String> cutter,
    Optional<Quantity> stickout,
    Optional<String> notes) {

  private static final String[] FIELDS = {
    "name", "spindle", "holder", "cutter", "stickout", "notes"
  };

  static Setup of(Entry entry) {
    Section s = Section.of(entry, FIELDS);
    return new Setup(
        s.requiredText("name"),
        s.requiredText("spindle"),
        s.text("holder"),
        s.text("cutter"),
        s.quantity("stickout", Dimension.LENGTH, Bound.POSITIVE),
        s.text("notes"));
  }
}
