package rundlauf.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** Understands what a cut says of its setup: a name in a bench, or traits of its own. */
final class SetupReader {
  private static final List<String> NAMED = List.of("bench", "name");
  private static final List<String> GIVEN =
      List.of(
          "eccentricity",
          "first-tooth",
          "tilt",
          "tilt-angle",
          "stiffness",
          "modes",
          "speed",
          "power",
          "power-at");

  private SetupReader() {}

  static Cut.SetupTyped read(Entry entry) {
    String[] all = Stream.concat(GIVEN.stream(), NAMED.stream()).toArray(String[]::new);
    Section s = Section.of(entry, all);
    Optional<String> named = NAMED.stream().filter(s::has).findFirst();
    if (named.isEmpty()) {
      return given(s);
    }
    Optional<String> own = GIVEN.stream().filter(s::has).findFirst();
    if (own.isPresent()) {
      throw Refused.at(
          s.place(own.get()), "setup-of-two-kinds", Arg.of(named.get()), Arg.of(own.get()));
    }
    if (!s.has("bench")) {
      throw Refused.at(s.place("bench"), "setup-name-without-bench", s.typed("name"));
    }
    return new Cut.SetupNamed(s.requiredText("bench"), s.requiredText("name"));
  }

  private static Cut.SetupGiven given(Section s) {
    Optional<Quantity> tilt = tilt(s);
    if (tilt.isEmpty() && s.has("tilt-angle")) {
      Place place = s.place("tilt-angle");
      throw Refused.at(place, "angle-without-tilt", s.typed("tilt-angle"));
    }
    Optional<Section> speed = s.section("speed", "min", "max");
    Optional<Quantity> slowest = speed.flatMap(r -> speed(r, "min"));
    Optional<Quantity> fastest = speed.flatMap(r -> speed(r, "max"));
    if (slowest.isPresent() && fastest.isPresent() && slowest.get().si() > fastest.get().si()) {
      Section r = speed.orElseThrow();
      throw Refused.at(r.place("min"), "span-reversed", r.typed("min"), r.typed("max"));
    }
    return new Cut.SetupGiven(
        s.quantity("eccentricity", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        s.quantity("first-tooth", Dimension.ANGLE, Bound.ANY),
        tilt,
        s.quantity("tilt-angle", Dimension.ANGLE, Bound.ANY),
        stiffness(s, "x"),
        stiffness(s, "y"),
        slowest,
        fastest,
        s.quantity("power", Dimension.POWER, Bound.POSITIVE),
        powerAt(s, fastest.isPresent()),
        s.items("modes").stream().map(SetupReader::mode).toList());
  }

  /** A bare number would be metres for each metre, a thousand times what anyone means. */
  private static Optional<Quantity> tilt(Section s) {
    Optional<Quantity> tilt = s.quantity("tilt", Dimension.NUMBER, Bound.NOT_NEGATIVE);
    if (tilt.isPresent() && tilt.get().unit() != Unit.MICROMETRE_PER_MILLIMETRE) {
      throw Refused.at(
          s.place("tilt"),
          "unit-missing",
          s.typed("tilt"),
          Arg.of(Unit.MICROMETRE_PER_MILLIMETRE.symbol()));
    }
    return tilt;
  }

  private static Optional<Quantity> speed(Section range, String end) {
    return range.quantity(end, Dimension.FREQUENCY, Bound.POSITIVE);
  }

  /** One value for both directions, or one for each. */
  private static Optional<Quantity> stiffness(Section s, String direction) {
    if (s.entry("stiffness").orElse(null) instanceof Entry.Fields both) {
      Section each = Section.of(both, "x", "y");
      return Optional.of(each.requiredQuantity(direction, Dimension.STIFFNESS, Bound.POSITIVE));
    }
    return s.quantity("stiffness", Dimension.STIFFNESS, Bound.POSITIVE);
  }

  private static Optional<Quantity> powerAt(Section s, boolean fastestGiven) {
    Optional<Quantity> at = s.quantity("power-at", Dimension.FREQUENCY, Bound.POSITIVE);
    Place place = s.place("power-at");
    if (at.isPresent() && !s.has("power")) {
      throw Refused.at(place, "speed-without-power", s.typed("power-at"));
    }
    if (at.isEmpty() && s.has("power") && !fastestGiven) {
      throw Refused.at(place, "power-without-speed", s.typed("power"));
    }
    return at;
  }

  private static Cut.Mode mode(Entry entry) {
    Section s = Section.of(entry, "frequency", "damping", "stiffness", "direction");
    Quantity damping = s.requiredQuantity("damping", Dimension.NUMBER, Bound.POSITIVE);
    if (damping.si() + damping.halfWidth() >= 1) {
      throw Refused.at(s.place("damping"), "damping-out-of-range", s.typed("damping"));
    }
    return new Cut.Mode(
        s.requiredQuantity("frequency", Dimension.FREQUENCY, Bound.POSITIVE),
        damping,
        s.requiredQuantity("stiffness", Dimension.STIFFNESS, Bound.POSITIVE),
        s.word("direction", "x", "y")
            .orElseThrow(() -> Refused.at(s.place("direction"), "mode-without-direction")));
  }
}
