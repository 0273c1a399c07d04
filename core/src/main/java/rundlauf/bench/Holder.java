package rundlauf.bench;

import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;

/**
 * What holds the tool.
 *
 * @param name in the bench
 * @param kind collet, chuck, sleeve or other
 * @param system such as ER11
 * @param bore what it is meant for
 * @param range of shanks it closes on
 * @param material such as steel
 * @param grade its class of runout, as typed under {@code class}
 * @param maxSpeed its nut's or its own
 * @param notes as given
 */
public record Holder(
    String name,
    Optional<String> kind,
    Optional<String> system,
    Optional<Quantity> bore,
    Optional<Span> range,
    Optional<String> material,
    Optional<String> grade,
    Optional<Quantity> maxSpeed,
    Optional<String> notes) {

  private static final String[] FIELDS = {
    "name", "kind", "system", "bore", "range", "material", "class", "max-speed", "notes"
  };

  static Holder of(Entry entry) {
    Section s = Section.of(entry, FIELDS);
    return new Holder(
        s.requiredText("name"),
        s.word("kind", "collet", "chuck", "sleeve", "other"),
        s.text("system"),
        s.quantity("bore", Dimension.LENGTH, Bound.POSITIVE),
        Span.of(s, "range", Dimension.LENGTH),
        s.text("material"),
        s.text("class"),
        s.quantity("max-speed", Dimension.FREQUENCY, Bound.POSITIVE),
        s.text("notes"));
  }
}
