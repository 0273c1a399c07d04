package rundlauf.bench;

import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;

/**
 * A dial or lever indicator, as its owner knows it.
 *
 * @param name in the bench; empty when it was described in a trial
 * @param division one division
 * @param readTo what readings are rounded to, when not to a division
 * @param limitOfError largest error of a difference of two readings
 * @param hysteresis forward against return at one point
 * @param repeatability as the maker or a certificate states it
 * @param tipRadius radius of a ball tip
 * @param angle between plunger and measured direction
 * @param fromNorm that its limits are those a norm permits, where they are
 */
public record Indicator(
    Optional<String> name,
    Quantity division,
    Optional<Quantity> readTo,
    Optional<Limit> limitOfError,
    Optional<Quantity> hysteresis,
    Optional<Quantity> repeatability,
    Optional<Quantity> tipRadius,
    Optional<Quantity> angle,
    Optional<Saying> fromNorm) {

  /** Limits of error by the span they hold for; {@code range} for the whole range. */
  public record Limit(
      Optional<Quantity> tenthTurn,
      Optional<Quantity> halfTurn,
      Optional<Quantity> turn,
      Quantity range) {}

  private static final String[] FIELDS = {
    "division",
    "read-to",
    "limit-of-error",
    "hysteresis",
    "repeatability",
    "tip-radius",
    "angle",
    "norm",
    "range",
    "bezel"
  };

  /** An indicator described in a trial. */
  public static Indicator inline(Entry entry) {
    return of(Section.of(entry, FIELDS), Optional.empty());
  }

  /** An indicator of a bench. */
  static Indicator named(Entry entry) {
    String[] fields =
        Stream.concat(Stream.of("name", "notes"), Stream.of(FIELDS)).toArray(String[]::new);
    Section section = Section.of(entry, fields);
    return of(section, Optional.of(section.requiredText("name")));
  }

  private static Indicator of(Section s, Optional<String> name) {
    Quantity division =
        s.plain("division", Dimension.LENGTH, Bound.POSITIVE)
            .orElseThrow(() -> Refused.at(s.place("division"), "division-missing"));
    Optional<PermittedErrors> permitted = PermittedErrors.of(s, division);
    return new Indicator(
        name,
        division,
        s.plain("read-to", Dimension.LENGTH, Bound.POSITIVE),
        limit(s).or(() -> permitted.map(PermittedErrors::limitOfError)),
        s.plain("hysteresis", Dimension.LENGTH, Bound.NOT_NEGATIVE)
            .or(() -> permitted.map(PermittedErrors::hysteresis)),
        s.plain("repeatability", Dimension.LENGTH, Bound.NOT_NEGATIVE)
            .or(() -> permitted.map(PermittedErrors::repeatability)),
        s.plain("tip-radius", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        angle(s),
        permitted.map(PermittedErrors::said));
  }

  private static Optional<Limit> limit(Section s) {
    if (s.entry("limit-of-error").orElse(null) instanceof Entry.Fields f) {
      Section spans = Section.of(f, "tenth-turn", "half-turn", "turn", "range");
      return Optional.of(rising(spans));
    }
    return s.plain("limit-of-error", Dimension.LENGTH, Bound.NOT_NEGATIVE)
        .map(q -> new Limit(Optional.empty(), Optional.empty(), Optional.empty(), q));
  }

  /** A limit over a longer span is never smaller: a smaller one is a slip of the pen. */
  private static Limit rising(Section spans) {
    double least = 0;
    for (String span : new String[] {"tenth-turn", "half-turn", "turn", "range"}) {
      Optional<Quantity> limit = spans.plain(span, Dimension.LENGTH, Bound.NOT_NEGATIVE);
      if (limit.isPresent() && limit.get().si() < least) {
        throw Refused.at(spans.place(span), "limits-of-error-fall", spans.typed(span));
      }
      least = limit.map(Quantity::si).orElse(least);
    }
    return new Limit(
        spans.plain("tenth-turn", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        spans.plain("half-turn", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        spans.plain("turn", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        spans
            .plain("range", Dimension.LENGTH, Bound.NOT_NEGATIVE)
            .orElseThrow(() -> Refused.at(spans.place("range"), "limit-of-range-missing")));
  }

  private static Optional<Quantity> angle(Section s) {
    Optional<Quantity> angle = s.quantity("angle", Dimension.ANGLE, Bound.NOT_NEGATIVE);
    if (angle.isPresent() && angle.get().si() + angle.get().halfWidth() >= Math.PI / 2) {
      throw Refused.at(s.place("angle"), "indicator-angle-too-large", s.typed("angle"));
    }
    return angle;
  }
}
