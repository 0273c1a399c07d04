package rundlauf.bench;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

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
 * @param document all that was typed, for its places
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
    Optional<String> notes,
    Entry.Fields document) {

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

  /** A job of a bench. */
  static Job of(Entry entry) {
    Section s = Section.of(entry, FIELDS);
    return of(s, s.requiredText("name"), entry);
  }

  /**
   * A job that stands in a file of its own; it may have no name.
   *
   * @param file as the user named it; its name where it has none
   * @throws rundlauf.quantity.Refused for a field that is unknown or of another kind
   */
  public static Job of(String file, Entry.Fields document) {
    Section s = Section.of(document, FIELDS);
    return of(s, s.text("name").orElse(file), document);
  }

  private static Job of(Section s, String name, Entry entry) {
    return new Job(
        name,
        material(s),
        s.texts("cutter"),
        s.word("feature", "slot", "pocket", "profile", "engrave", "drill"),
        length(s, "depth"),
        length(s, "width"),
        length(s, "length"),
        length(s, "tolerance"),
        wallShare(s),
        length(s, "finish"),
        s.section("workholding", "in-plane", "lift").map(Job::workholding),
        s.text("notes"),
        (Entry.Fields) entry);
  }

  /** Where a field stands, such as {@code depth}; where it is missing, where it should. */
  public Place place(String field) {
    Place job = document.place();
    String path = job.field().isEmpty() ? field : job.field() + "." + field;
    return document.get(field).map(Entry::place).orElseGet(() -> job.field(path));
  }

  /** Kept as typed, so that a name nobody knows can be told with its place. */
  private static Optional<Entry> material(Section s) {
    Optional<Entry> typed = s.entry("material");
    typed.ifPresent(Material::of);
    return typed;
  }

  private static Optional<Quantity> wallShare(Section s) {
    Optional<Quantity> share = s.quantity("wall-share", Dimension.NUMBER, Bound.POSITIVE);
    if (share.isPresent() && share.get().si() > 1) {
      Place place = s.place("wall-share");
      throw Refused.at(place, "wall-share-over-one", s.typed("wall-share"));
    }
    return share;
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
