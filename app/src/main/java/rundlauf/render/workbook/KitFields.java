package rundlauf.render.workbook;

import static rundlauf.render.workbook.KitField.named;
import static rundlauf.render.workbook.KitField.naming;
import static rundlauf.render.workbook.KitField.needed;
import static rundlauf.render.workbook.KitField.of;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every field of a bench's equipment that its readers know, section by section. */
final class KitFields {
  /** The sections in the order in which they are needed. */
  static final Map<String, List<KitField>> SECTIONS = sections();

  private KitFields() {}

  private static Map<String, List<KitField>> sections() {
    Map<String, List<KitField>> all = new LinkedHashMap<>();
    all.put("spindles", spindles());
    all.put("holders", holders());
    all.put("cutters", cutters());
    all.put("indicators", indicators());
    all.put("rigs", rigs());
    all.put("materials", materials());
    all.put("setups", setups());
    all.put("jobs", jobs());
    return Collections.unmodifiableMap(all);
  }

  private static List<KitField> spindles() {
    return List.of(
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
        of("notes"));
  }

  private static List<KitField> holders() {
    return List.of(
        needed("name"),
        of("kind", "collet", "chuck", "sleeve", "other"),
        of("system"),
        of("bore"),
        of("range.min"),
        of("range.max"),
        of("material"),
        of("class"),
        of("max-speed"),
        of("notes"));
  }

  private static List<KitField> cutters() {
    return named(
        "kind diameter flutes helix flute-length stickout shank modulus"
            + " strength edge-radius angle max-speed notes");
  }

  private static List<KitField> indicators() {
    return List.of(
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
        of("notes"));
  }

  private static List<KitField> rigs() {
    return named("load-arm contact-arm mass gravity notes");
  }

  private static List<KitField> materials() {
    return named(
        "force.Ktc force.Krc force.Kac force.Kte force.Kre force.Kae"
            + " force.kc11 force.mc force.kr-ratio force.ka-ratio cutting-speed.min cutting-speed.max"
            + " largest-chip notes");
  }

  private static List<KitField> setups() {
    return List.of(
        needed("name"),
        naming("spindle", "spindles", true),
        naming("holder", "holders", false),
        naming("cutter", "cutters", false),
        of("stickout"),
        of("notes"));
  }

  private static List<KitField> jobs() {
    return List.of(
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
        of("notes"));
  }
}
