package rundlauf.bench;

import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/** From a least to a greatest value, both included: {@code {min: 2.5 mm, max: 3 mm}}. */
public record Span(Quantity min, Quantity max) {
  static Optional<Span> of(Section section, String name, Dimension dimension) {
    return section.section(name, "min", "max").map(s -> of(s, dimension));
  }

  private static Span of(Section s, Dimension dimension) {
    Quantity min = s.requiredQuantity("min", dimension, Bound.NOT_NEGATIVE);
    Quantity max = s.requiredQuantity("max", dimension, Bound.POSITIVE);
    if (min.si() > max.si()) {
      throw Refused.at(s.place("min"), "span-reversed", s.typed("min"), s.typed("max"));
    }
    return new Span(min, max);
  }
}
