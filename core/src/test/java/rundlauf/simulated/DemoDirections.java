package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Stream;

/** The demo bench's side load in three directions, the dial turned along each. */
final class DemoDirections {
  private static final double UM = 1e-6;
  private static final double MM = 1e-3;
  private static final String NAME = "dunlin-chuck-directions";
  private static final int[] DIRECTIONS = {0, 60, 120};

  /** Softest along 35°, where it is nearly twice as soft as across: one screw of the clamp. */
  private static final double SOFT_AXIS = Math.toRadians(35);

  private static final double SOFT = 1 / 0.16e6;
  private static final double STIFF = 1 / 0.30e6;
  private static final Shank PIN = Shank.clean(3 * MM, 210e9, 10 * MM).gripped(0.9 * MM);
  private static final LoadPlan PLAN = LoadPlan.oneSided(4).andBack().bothWays();

  private DemoDirections() {}

  static List<DemoTrial> all(long seed) {
    Stream stream = Stream.of(seed, NAME);
    Lever lever = new Lever(0.25, 0.0005, 180 * MM, 0.5 * MM, 60 * MM, 0.5 * MM);
    double scale = lever.trueScale(stream);
    var truly = new Lever(lever.mass() * scale, 0, lever.loadArm(), 0, lever.contactArm(), 0);
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("dial_deg", "direction_deg", "count", "branch", "reading_mm"));
    for (int direction : DIRECTIONS) {
      var nose = new Nose(along(Math.toRadians(direction)), 8 * UM, 0.5, 2 * UM, 0);
      TakenLoad taken = LoadBench.take(stream, nose, PIN, truly, PLAN, DemoDials.PLUNGER);
      taken.rows().forEach(r -> rows.add(row(direction, r)));
    }
    return List.of(new DemoTrial(NAME + "-side-load.yaml", text(rows), truths()));
  }

  /** Travel along a push over its force, the pin's own bending left out [m/N]. */
  private static double along(double direction) {
    double cos = Math.cos(direction - SOFT_AXIS);
    return SOFT * cos * cos + STIFF * (1 - cos * cos);
  }

  private static List<String> row(int direction, TakenLoad.Row r) {
    int other = r.direction() == 0 ? direction : direction + 180;
    return List.of(
        Integer.toString(direction),
        Integer.toString(other),
        Integer.toString(r.count()),
        r.falling() ? "down" : "up",
        TrialText.steps(r.step(), "0.01"));
  }

  private static String text(List<List<String>> rows) {
    var text =
        TrialText.of(
            "side-load",
            "Dunlin with the drill chuck pushed in three directions: where its clamp is soft",
            "2026-03-17",
            "Dunlin chuck",
            "Plug pulled. The dial's stand was moved round with the lever, along each push.",
            "One of the two screws of the clamp has stripped.");
    text.field(
        "conditions",
        "{warm-up: 10 min, temperature: 18 degC, cleaned: yes, pin: ground pin 3 mm, rotor: free}");
    text.field("indicator", "plunger dial");
    text.field("load", "brass lever");
    text.field("contact", "10 mm");
    text.field("body", "{diameter: 3 mm, modulus: 210 GPa}");
    text.field("reference", "table");
    text.field("reaction", "table");
    text.readings(rows);
    return text.text();
  }

  private static List<DemoTrial.Truth> truths() {
    double pin = PIN.compliance();
    return List.of(
        DemoTrial.Truth.stiffness("stiffness", 1 / (along(0) + pin)),
        DemoTrial.Truth.um("play", 8 * UM),
        DemoTrial.Truth.degrees("directions.soft.angle", SOFT_AXIS),
        DemoTrial.Truth.stiffness("directions.soft.stiffness", 1 / (SOFT + pin)),
        DemoTrial.Truth.degrees("directions.stiff.angle", SOFT_AXIS + Math.PI / 2),
        DemoTrial.Truth.stiffness("directions.stiff.stiffness", 1 / (STIFF + pin)));
  }
}
