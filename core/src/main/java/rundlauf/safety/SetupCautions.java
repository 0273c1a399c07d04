package rundlauf.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Cutter;
import rundlauf.bench.Holder;
import rundlauf.bench.Setup;
import rundlauf.bench.Span;
import rundlauf.bench.Spindle;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.safety.norm.ColletRange;

/** What must be looked at in the way a setup is put together, before anything is measured. */
public final class SetupCautions {
  /**
   * Diameters closer than this are the same; our choice: wider than an h6 shank of any size a
   * desktop machine holds, far narrower than the step to the next size.
   */
  private static final double SAME_DIAMETER = 0.02e-3;

  /** Speeds closer than this are the same, in whatever units they were typed. */
  private static final double SAME_SPEED = 1e-9;

  private SetupCautions() {}

  /**
   * A shank its holder does not close on, a collet's bore or range that its size does not have, a
   * spindle that can turn faster than its cutter or its nut may, and a pin of another diameter than
   * the shank.
   *
   * @param pin diameter [m] of the pin that was measured on; empty when none was
   * @param top fastest speed measured [1/s]; empty when none was. The spindle's label counts too
   * @return a caution for each, in this order; none for what the bench does not say
   */
  public static List<Saying> of(Bench bench, Setup setup, OptionalDouble pin, OptionalDouble top) {
    return of(bench, setup, setup.cutter().flatMap(bench::cutter), pin, top);
  }

  /** As above, with a cutter that need not be the setup's own. */
  public static List<Saying> of(
      Bench bench, Setup setup, Optional<Cutter> cutter, OptionalDouble pin, OptionalDouble top) {
    Optional<Holder> holder = setup.holder().flatMap(bench::holder);
    Optional<Quantity> shank = cutter.flatMap(Cutter::shank);
    List<Saying> cautions = new ArrayList<>();
    if (holder.isPresent() && shank.isPresent()) {
      outside(holder.get(), shank.get()).ifPresent(cautions::add);
    }
    holder.map(ColletRange::cautions).ifPresent(cautions::addAll);
    OptionalDouble fastest = fastest(bench.spindle(setup.spindle()), top);
    cutter
        .flatMap(c -> tooFast("cutter-too-fast", name(c), c.maxSpeed(), setup, fastest))
        .ifPresent(cautions::add);
    holder
        .flatMap(h -> tooFast("holder-too-fast", Arg.of(h.name()), h.maxSpeed(), setup, fastest))
        .ifPresent(cautions::add);
    if (pin.isPresent() && shank.isPresent()) {
      otherPin(pin.getAsDouble(), shank.get()).ifPresent(cautions::add);
    }
    return cautions;
  }

  private static Optional<Saying> outside(Holder holder, Quantity shank) {
    Optional<Span> range = holder.range();
    double least = range.map(span -> span.min().si()).orElse(0.0);
    double most =
        range.map(Span::max).or(holder::bore).map(Quantity::si).orElse(Double.POSITIVE_INFINITY);
    if (shank.si() > most + SAME_DIAMETER) {
      return Optional.of(
          Saying.of("shank-too-thick", "setup", amount(shank), Arg.of(holder.name()), mm(most)));
    }
    return shank.si() < least - SAME_DIAMETER
        ? Optional.of(
            Saying.of("shank-too-thin", "setup", amount(shank), Arg.of(holder.name()), mm(least)))
        : Optional.empty();
  }

  /** The faster of what was measured and what the label says. */
  private static OptionalDouble fastest(Optional<Spindle> spindle, OptionalDouble top) {
    Optional<Span> label = spindle.flatMap(Spindle::labelSpeed);
    double said = label.map(span -> span.max().si()).orElse(0.0);
    double most = Math.max(said, top.orElse(0));
    return most > 0 ? OptionalDouble.of(most) : OptionalDouble.empty();
  }

  private static Optional<Saying> tooFast(
      String code, Arg name, Optional<Quantity> allowed, Setup setup, OptionalDouble fastest) {
    if (allowed.isEmpty()
        || fastest.isEmpty()
        || fastest.getAsDouble() <= allowed.get().si() * (1 + SAME_SPEED)) {
      return Optional.empty();
    }
    return Optional.of(
        Saying.of(
            code,
            "setup",
            name,
            Arg.of(allowed.get().si(), Unit.RPM),
            Arg.of(setup.spindle()),
            Arg.of(fastest.getAsDouble(), Unit.RPM)));
  }

  /** A cutter described in a cut may have no name. */
  private static Arg name(Cutter cutter) {
    return cutter.name().isEmpty() ? Arg.term("of-this-cut") : Arg.of(cutter.name());
  }

  private static Optional<Saying> otherPin(double pin, Quantity shank) {
    return Math.abs(pin - shank.si()) > SAME_DIAMETER
        ? Optional.of(Saying.of("pin-other-than-shank", "setup", mm(pin), amount(shank)))
        : Optional.empty();
  }

  private static Arg amount(Quantity quantity) {
    return Arg.of(quantity.si(), quantity.unit());
  }

  private static Arg mm(double si) {
    return Arg.of(si, Unit.MILLIMETRE);
  }
}
