package rundlauf.bench;

import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/**
 * A lever and a mass: force = mass · gravity · load arm / contact arm.
 *
 * @param name in the bench; empty when it was described in a trial
 * @param mass what hangs on it, or one of several equal ones
 * @param arms the lever; empty when the mass pulls directly
 * @param gravity where it hangs, when not the standard one
 */
public record Rig(
    Optional<String> name,
    Optional<Quantity> mass,
    Optional<Arms> arms,
    Optional<Quantity> gravity) {

  /** From the pivot to the mass, and from the pivot to the contact. */
  public record Arms(Quantity loadArm, Quantity contactArm) {
    public double ratio() {
      return loadArm.si() / contactArm.si();
    }
  }

  private static final String[] FIELDS = {"mass", "load-arm", "contact-arm", "gravity"};

  /** A rig described in a trial. */
  public static Rig inline(Entry entry) {
    return of(Section.of(entry, FIELDS), Optional.empty());
  }

  /** A rig of a bench. */
  static Rig named(Entry entry) {
    String[] fields =
        Stream.concat(Stream.of("name", "notes"), Stream.of(FIELDS)).toArray(String[]::new);
    Section section = Section.of(entry, fields);
    return of(section, Optional.of(section.requiredText("name")));
  }

  private static Rig of(Section s, Optional<String> name) {
    return new Rig(
        name,
        s.quantity("mass", Dimension.MASS, Bound.POSITIVE),
        arms(s),
        s.quantity("gravity", Dimension.ACCELERATION, Bound.POSITIVE));
  }

  private static Optional<Arms> arms(Section s) {
    Optional<Quantity> load = s.quantity("load-arm", Dimension.LENGTH, Bound.POSITIVE);
    Optional<Quantity> contact = s.quantity("contact-arm", Dimension.LENGTH, Bound.POSITIVE);
    if (load.isPresent() != contact.isPresent()) {
      String missing = load.isPresent() ? "contact-arm" : "load-arm";
      throw Refused.at(s.place(missing), "one-arm-only");
    }
    return load.map(l -> new Arms(l, contact.orElseThrow()));
  }
}
