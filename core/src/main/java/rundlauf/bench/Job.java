package rundlauf.bench;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;

/**
 * Work to be done.
 *
 * @param name in the bench
 * @param material as typed: a name from a library or the bench, or its own coefficients
 * @param cutters names of cutters of the bench; empty: the setup's own
 * @param feature slot, pocket, profile, engrave, drill
 * @param tolerance total width of the zone
 * @param wallShare the share of the tolerance that the wall's error may take
 * @param finish the cusp that may stand
 * @param workholding what it bears
 */
public record Job(
    String name,
    Optional<Entry> material,
    List<String> cutters,
    Optional<String> feature,
    Optional<Quantity> depth,
    Optional<Quantity> width,
    Optional<Quantity> length,
    Optional<Quantity> tolerance,
    Optional<Quantity> wallShare,
    Optional<Quantity> finish,
    Optional<Workholding> workholding,
    Optional<String> notes) {

  public Job {
    cutters = List.copyOf(cutters);
  }

  /** Force the workholding bears in the plane, and against lifting. */
  public record Workholding(Optional<Quantity> inPlane, Optional<Quantity> lift) {}

  private static final String[] FIELDS = {
    "name",
    "material",
    "cutter",
    "feature",
    "depth",
    "width",
    "length",
    "tolerance",
    "wall-share",
    "finish",
    "workholding",
    "notes"
  };

  static Job of(Entry entry) {
    Section s = Section.of(entry, FIELDS);
    return new Job(
        s.requiredText("name"),
        material(s),
        s.texts("cutter"),
        s.word("feature", "slot", "pocket", "profile", "engrave", "drill"),
        length(s, "depth"),
        length(s, "width"),
        length(s, "length"),
        length(s, "tolerance"),
        s.quantity("wall-share", Dimension.NUMBER, Bound.POSITIVE),
        length(s, "finish"),
        s.section("workholding", "in-plane", "lift").map(Job::workholding),
        s.text("notes"));
  }

  /** Kept as typed, so that a name nobody knows can be told with its place. */
  private static Optional<Entry> material(Section s) {
    Optional<Entry> typed = s.entry("material");
    typed.ifPresent(Material::of);
    return typed;
  }

  private static Optional<Quantity> length(Section s, String name) {
    return s.quantity(name, Dimension.LENGTH, Bound.POSITIVE);
  }

  private static Workholding workholding(Section s) {
    return new Workholding(
        s.quantity("in-plane", Dimension.FORCE, Bound.NOT_NEGATIVE),
        s.quantity("lift", Dimension.FORCE, Bound.NOT_NEGATIVE));
  }
}
