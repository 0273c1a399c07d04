package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Entry;
import rundlauf.bench.Rig;
import rundlauf.bench.Section;
import rundlauf.bench.Table;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/**
 * How the force of each row is had.
 *
 * @param kind what the rows carry
 * @param newtons force per unit of what the rows carry (N, kg, count), or of each loaded row
 * @param scale true force over stated force, with the causes all rows share
 */
record ForceReader(Kind kind, double newtons, Measured scale) {
  /** Standard gravity [m/s²]. from memory: The International System of Units, 9th ed. */
  private static final double STANDARD_GRAVITY = 9.80665;

  /** What the rows carry. */
  enum Kind {
    LOAD,
    MASS,
    COUNT
  }

  static ForceReader read(String file, Section s, Columns columns, Optional<Bench> bench) {
    Kind kind = kind(columns);
    Optional<Rig> rig = rig(s, bench);
    if (kind == Kind.LOAD) {
      if (rig.isPresent()) {
        throw Refused.at(columns.place("load"), "load-said-twice");
      }
      return new ForceReader(kind, 1, Measured.exact(1, Unit.ONE));
    }
    String record = rig.flatMap(Rig::name).map(name -> "rig/" + name).orElse(file);
    ForceReader perKilogram = lever(record, rig);
    if (kind == Kind.MASS) {
      return perKilogram;
    }
    Quantity mass =
        rig.flatMap(Rig::mass)
            .orElseThrow(() -> Refused.at(columns.place("count"), "count-without-mass"));
    Measured scale = with(perKilogram.scale(), record, "mass", Optional.of(mass), 1);
    return new ForceReader(kind, perKilogram.newtons() * mass.si(), scale);
  }

  /** Force per kilogram: gravity, and what the lever makes of it. */
  private static ForceReader lever(String record, Optional<Rig> rig) {
    Optional<Quantity> gravity = rig.flatMap(Rig::gravity);
    Optional<Rig.Arms> arms = rig.flatMap(Rig::arms);
    double newtons =
        gravity.map(Quantity::si).orElse(STANDARD_GRAVITY) * arms.map(Rig.Arms::ratio).orElse(1.0);
    Measured scale = with(Measured.exact(1, Unit.ONE), record, "gravity", gravity, 1);
    scale = with(scale, record, "load-arm", arms.map(Rig.Arms::loadArm), 1);
    scale = with(scale, record, "contact-arm", arms.map(Rig.Arms::contactArm), -1);
    return new ForceReader(Kind.MASS, newtons, scale);
  }

  /** The relative effect of one factor of the force; {@code sign} −1 for a divisor. */
  private static Measured with(
      Measured scale, String record, String part, Optional<Quantity> factor, int sign) {
    return factor.filter(Quantity::hasLimits).isEmpty()
        ? scale
        : scale.with(Cause.rectangular(record, part), sign * factor.get().u() / factor.get().si());
  }

  private static Kind kind(Columns columns) {
    List<Kind> there = List.of(Kind.values()).stream().filter(k -> columns.has(column(k))).toList();
    if (there.size() > 1) {
      throw Refused.at(columns.place(column(there.get(1))), "load-columns-many");
    }
    if (there.isEmpty()) {
      throw columns.missing("load-column-missing");
    }
    return there.get(0);
  }

  private static String column(Kind kind) {
    return switch (kind) {
      case LOAD -> "load";
      case MASS -> "mass";
      case COUNT -> "count";
    };
  }

  private static Optional<Rig> rig(Section s, Optional<Bench> bench) {
    Entry entry = s.entry("load").orElse(null);
    if (entry == null) {
      return Optional.empty();
    }
    if (entry instanceof Entry.Fields) {
      return Optional.of(Rig.inline(entry));
    }
    String name = s.requiredText("load");
    Bench defining = bench.orElseThrow(() -> HeadReader.withoutBench(s, "load"));
    Optional<Rig> rig = defining.rig(name);
    if (rig.isEmpty()) {
      List<String> defined = defining.rigs().stream().map(r -> r.name().orElse("")).toList();
      throw BenchReader.undefined(s.place("load"), name, defined);
    }
    return rig;
  }

  /** The stated force of a row [N]. */
  double newtons(Columns columns, Table.Row row) {
    return kind == Kind.COUNT
        ? newtons * columns.count(row, "count", 0)
        : newtons * columns.notNegative(row, column(kind));
  }
}
