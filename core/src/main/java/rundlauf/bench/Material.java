package rundlauf.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/**
 * A material as typed.
 *
 * @param name of a library or the bench, or its own
 * @param force its own coefficients; empty: those of the name
 * @param cuttingSpeed the cutting speeds it bears
 * @param largestChip the thickest chip it bears
 * @param notes as given
 */
public record Material(
    String name,
    Optional<Force> force,
    Optional<Span> cuttingSpeed,
    Optional<Quantity> largestChip,
    Optional<String> notes) {

  /** Force coefficients as typed. */
  public sealed interface Force {}

  /**
   * A cutting part on the chip's thickness and an edge part on the edge's length.
   *
   * @param kac with {@code kae}; both empty when the axial force is not known
   */
  public record EdgeForce(
      Quantity ktc,
      Quantity krc,
      Optional<Quantity> kac,
      Quantity kte,
      Quantity kre,
      Optional<Quantity> kae)
      implements Force {}

  /**
   * Kienzle's law, the edge in it.
   *
   * @param kaRatio empty when the axial force is not known
   */
  public record ChipPower(Quantity kc11, Quantity mc, Quantity krRatio, Optional<Quantity> kaRatio)
      implements Force {}

  private static final List<String> EDGE = List.of("Ktc", "Krc", "Kac", "Kte", "Kre", "Kae");
  private static final List<String> POWER = List.of("kc11", "mc", "kr-ratio", "ka-ratio");

  /** The material of a cut or a job: a name alone, or fields. */
  public static Material of(Entry entry) {
    if (entry instanceof Entry.Scalar name && !name.text().isBlank()) {
      return new Material(
          name.text().strip(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }
    return read(Section.of(entry, "name", "force", "cutting-speed", "largest-chip", "notes"));
  }

  /** A material that the bench defines: it has its own coefficients. */
  static Material defined(Entry entry) {
    Material material = of(entry);
    if (material.force().isEmpty()) {
      throw Refused.at(entry.place(), "material-without-force", Arg.typed(material.name()));
    }
    return material;
  }

  private static Material read(Section s) {
    return new Material(
        s.requiredText("name"),
        s.section("force", names()).map(Material::force),
        Span.of(s, "cutting-speed", Dimension.VELOCITY),
        s.plain("largest-chip", Dimension.LENGTH, Bound.POSITIVE),
        s.text("notes"));
  }

  private static String[] names() {
    return Stream.concat(EDGE.stream(), POWER.stream()).toArray(String[]::new);
  }

  private static Force force(Section s) {
    Optional<String> edge = EDGE.stream().filter(s::has).findFirst();
    Optional<String> power = POWER.stream().filter(s::has).findFirst();
    if (edge.isPresent() && power.isPresent()) {
      throw Refused.at(
          s.place(power.get()), "force-of-two-kinds", Arg.of(edge.get()), Arg.of(power.get()));
    }
    return power.isPresent() ? chipPower(s) : edgeForce(s);
  }

  private static EdgeForce edgeForce(Section s) {
    if (s.has("Kac") != s.has("Kae")) {
      String missing = s.has("Kac") ? "Kae" : "Kac";
      String given = s.has("Kac") ? "Kac" : "Kae";
      throw Refused.at(s.place(given), "axial-pair-broken", Arg.of(given), Arg.of(missing));
    }
    return new EdgeForce(
        s.requiredQuantity("Ktc", Dimension.PRESSURE, Bound.POSITIVE),
        s.requiredQuantity("Krc", Dimension.PRESSURE, Bound.ANY),
        s.quantity("Kac", Dimension.PRESSURE, Bound.ANY),
        s.requiredQuantity("Kte", Dimension.STIFFNESS, Bound.NOT_NEGATIVE),
        s.requiredQuantity("Kre", Dimension.STIFFNESS, Bound.NOT_NEGATIVE),
        s.quantity("Kae", Dimension.STIFFNESS, Bound.ANY));
  }

  private static ChipPower chipPower(Section s) {
    Quantity mc = s.requiredQuantity("mc", Dimension.NUMBER, Bound.NOT_NEGATIVE);
    if (mc.si() - mc.halfWidth() < 0 || mc.si() + mc.halfWidth() >= 1) {
      throw Refused.at(s.place("mc"), "exponent-out-of-range", s.typed("mc"));
    }
    return new ChipPower(
        s.requiredQuantity("kc11", Dimension.PRESSURE, Bound.POSITIVE),
        mc,
        s.requiredQuantity("kr-ratio", Dimension.NUMBER, Bound.NOT_NEGATIVE),
        s.quantity("ka-ratio", Dimension.NUMBER, Bound.ANY));
  }
}
