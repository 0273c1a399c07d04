package rundlauf.bench;

import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/**
 * A milling motor.
 *
 * @param name in the bench
 * @param drive brushed-dc, universal, brushless, induction, other
 * @param rotation cw or ccw, seen from above
 * @param input rated input power
 * @param efficiency shaft power over input, when known
 * @param supply what it is fed with
 * @param control fixed, dial, pwm, voltage, drive
 * @param labelSpeed what its label says
 * @param nose how far the nut stands from the clamp
 * @param rotorMass of everything that turns: rotor, shaft, nut and collet
 * @param notes as given
 */
public record Spindle(
    String name,
    Optional<String> drive,
    Optional<String> rotation,
    Optional<Quantity> input,
    Optional<Quantity> efficiency,
    Optional<Supply> supply,
    Optional<String> control,
    Optional<Span> labelSpeed,
    Optional<Nose> nose,
    Optional<Quantity> rotorMass,
    Optional<String> notes) {

  /** Voltage, and whether it alternates: ac or dc. */
  public record Supply(Quantity voltage, Optional<String> kind) {}

  /** From the nut's face to the middle of the clamp, and what is clamped: neck or body. */
  public record Nose(Optional<Quantity> toMount, Optional<String> clampedAt) {}

  private static final String[] FIELDS = {
    "name",
    "drive",
    "rotation",
    "input",
    "efficiency",
    "supply",
    "control",
    "label-speed",
    "nose",
    "rotor-mass",
    "notes"
  };

  static Spindle of(Entry entry) {
    Section s = Section.of(entry, FIELDS);
    return new Spindle(
        s.requiredText("name"),
        s.word("drive", "brushed-dc", "universal", "brushless", "induction", "other"),
        s.word("rotation", "cw", "ccw"),
        s.quantity("input", Dimension.POWER, Bound.POSITIVE),
        efficiency(s),
        s.section("supply", "voltage", "kind").map(Spindle::supply),
        s.word("control", "fixed", "dial", "pwm", "voltage", "drive"),
        Span.of(s, "label-speed", Dimension.FREQUENCY),
        s.section("nose", "to-mount", "clamped-at").map(Spindle::nose),
        s.quantity("rotor-mass", Dimension.MASS, Bound.POSITIVE),
        s.text("notes"));
  }

  private static Optional<Quantity> efficiency(Section s) {
    Optional<Quantity> efficiency = s.quantity("efficiency", Dimension.NUMBER, Bound.POSITIVE);
    if (efficiency.isPresent() && efficiency.get().si() > 1) {
      throw Refused.at(s.place("efficiency"), "efficiency-over-one", s.typed("efficiency"));
    }
    return efficiency;
  }

  private static Supply supply(Section s) {
    return new Supply(
        s.requiredQuantity("voltage", Dimension.VOLTAGE, Bound.POSITIVE),
        s.word("kind", "ac", "dc"));
  }

  private static Nose nose(Section s) {
    return new Nose(
        s.quantity("to-mount", Dimension.LENGTH, Bound.POSITIVE),
        s.word("clamped-at", "neck", "body"));
  }
}
