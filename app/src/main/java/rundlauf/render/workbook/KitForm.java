package rundlauf.render.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;

/** The forms of a bench's equipment: every field that its readers know, section by section. */
public final class KitForm {
  /**
   * A field as its section knows it.
   *
   * @param choices the words it may hold
   * @param names the section whose parts it names; empty text where it names none
   */
  private record Known(String path, List<String> choices, String names, boolean needed) {}

  private static final Map<String, List<Known>> SECTIONS = sections();

  private KitForm() {}

  /** The sections of a bench in the order in which they are needed. */
  public static List<String> names() {
    return List.copyOf(SECTIONS.keySet());
  }

  private static Map<String, List<Known>> sections() {
    Map<String, List<Known>> all = new LinkedHashMap<>();
    all.put(
        "spindles",
        List.of(
            needed("name"),
            of("drive", "brushed-dc", "universal", "brushless", "induction", "other"),
            of("rotation", "cw", "ccw"),
            of("input"),
            of("efficiency"),
            of("supply.voltage"),
            of("supply.kind", "ac", "dc"),
            of("control", "fixed", "dial", "pwm", "voltage", "drive"),
            of("label-speed.min"),
            of("label-speed.max"),
            of("nose.to-mount"),
            of("nose.clamped-at", "neck", "body"),
            of("rotor-mass"),
            of("notes")));
    all.put(
        "holders",
        List.of(
            needed("name"),
            of("kind", "collet", "chuck", "sleeve", "other"),
            of("system"),
            of("bore"),
            of("range.min"),
            of("range.max"),
            of("material"),
            of("class"),
            of("max-speed"),
            of("notes")));
    all.put(
        "cutters",
        plain(
            true,
            "kind diameter flutes helix flute-length stickout shank modulus"
                + " strength edge-radius angle max-speed notes"));
    all.put(
        "indicators",
        List.of(
            needed("name"),
            needed("division"),
            of("read-to"),
            of("limit-of-error"),
            of("limit-of-error.tenth-turn"),
            of("limit-of-error.half-turn"),
            of("limit-of-error.turn"),
            of("limit-of-error.range"),
            of("hysteresis"),
            of("repeatability"),
            of("tip-radius"),
            of("angle"),
            of("norm", "JIS B 7503"),
            of("range"),
            of("bezel", "50 mm or more", "under 50 mm"),
            of("notes")));
    all.put("rigs", plain(true, "load-arm contact-arm mass gravity notes"));
    all.put(
        "materials",
        plain(
            true,
            "force.Ktc force.Krc force.Kac force.Kte force.Kre force.Kae"
                + " force.kc11 force.mc force.kr-ratio force.ka-ratio cutting-speed.min cutting-speed.max"
                + " largest-chip notes"));
    all.put(
        "setups",
        List.of(
            needed("name"),
            naming("spindle", "spindles", true),
            naming("holder", "holders", false),
            naming("cutter", "cutters", false),
            of("stickout"),
            of("notes")));
    all.put(
        "jobs",
        List.of(
            needed("name"),
            of("material.name"),
            of("feature", "slot", "pocket", "profile", "engrave", "drill"),
            of("cutter[]"),
            of("depth"),
            of("width"),
            of("length"),
            of("tolerance"),
            of("wall-share"),
            of("finish"),
            of("workholding.in-plane"),
            of("workholding.lift"),
            of("notes")));
    return Collections.unmodifiableMap(all);
  }

  private static List<Known> plain(boolean named, String paths) {
    List<Known> fields = new ArrayList<>();
    if (named) {
      fields.add(needed("name"));
    }
    for (String path : paths.split(" ", -1)) {
      fields.add(of(path));
    }
    return fields;
  }

  private static Known of(String path, String... choices) {
    return new Known(path, List.of(choices), "", false);
  }

  private static Known needed(String path) {
    return new Known(path, List.of(), "", true);
  }

  private static Known naming(String path, String section, boolean needed) {
    return new Known(path, List.of(), section, needed);
  }

  private static List<Known> known(String section) {
    return SECTIONS.getOrDefault(section, List.of());
  }

  /** The paths of all fields of a section. */
  public static List<String> paths(String section) {
    return known(section).stream().map(Known::path).toList();
  }

  /**
   * The form of a part.
   *
   * @param part as it was typed
   * @param typed what stands in the form instead, by path; empty: the part
   */
  public static List<FormField> of(
      String section, Bench bench, Entry.Fields part, Map<String, String> typed) {
    List<FormField> fields = new ArrayList<>();
    for (Known known : known(section)) {
      String path = path(known.path(), part);
      fields.add(field("kit-" + section + "-", known, path, bench, text(path, part, typed)));
    }
    return fields;
  }

  /** The fields of the bench itself. */
  public static List<FormField> head(
      Bench bench, Entry.Fields document, Map<String, String> typed) {
    List<FormField> fields = new ArrayList<>();
    for (String path : List.of("machine.feed", "notes")) {
      fields.add(field("kit-bench-", of(path), path, bench, text(path, document, typed)));
    }
    return fields;
  }

  private static FormField field(
      String prefix, Known known, String path, Bench bench, String text) {
    String code = prefix + known.path().replace("[]", "");
    List<String> choices = known.names().isEmpty() ? known.choices() : names(known.names(), bench);
    return FormField.of(code, path, choices, known.needed(), text);
  }

  /** What may be a name alone or have fields stays what it is. */
  private static String path(String path, Entry.Fields part) {
    return path.endsWith(".name")
            && part.get(path.substring(0, path.indexOf('.'))).orElse(null) instanceof Entry.Scalar
        ? path.substring(0, path.indexOf('.'))
        : path;
  }

  private static String text(String path, Entry.Fields part, Map<String, String> typed) {
    return typed.isEmpty() ? EntryTexts.at(part, path) : typed.getOrDefault(path, "");
  }

  private static List<String> names(String section, Bench bench) {
    return switch (section) {
      case "spindles" -> bench.spindles().stream().map(s -> s.name()).toList();
      case "holders" -> bench.holders().stream().map(h -> h.name()).toList();
      default -> bench.cutters().stream().map(c -> c.name()).toList();
    };
  }
}
