package rundlauf.simulated;

import java.util.List;
import rundlauf.maths.Stream;

/** The demo bench's side-load trials, all with one lever. */
final class DemoLoads {
  private static final double UM = 1e-6;
  private static final double MM = 1e-3;
  private static final double STEEL = 210e9;
  private static final Lever LEVER = new Lever(0.25, 0.0005, 180 * MM, 0.5 * MM, 60 * MM, 0.5 * MM);
  private static final LoadPlan FOUR = LoadPlan.oneSided(4).andBack();

  private DemoLoads() {}

  static List<DemoTrial> all(long seed) {
    return List.of(heron(seed), heronWrongCollet(seed), wren(seed), dunlin(seed), shrike(seed));
  }

  private static DemoTrial heron(long seed) {
    var taken =
        take(
            seed,
            "heron-side-load",
            new Nose(1 / 0.62e6, 0, 0, 1.5 * UM, 0),
            Shank.clean(3 * MM, STEEL, 10 * MM).gripped(0.5 * MM),
            FOUR.bothWays().times(2));
    var text =
        head(
            "Heron with a 3 mm collet pushed both ways, up and down, twice",
            "2026-03-09",
            "Heron 3 mm",
            "Four brass weights on the lever, one after the other, off again in the same order.");
    return finished("heron-side-load", text, "3 mm", taken, both(taken, true));
  }

  private static DemoTrial heronWrongCollet(long seed) {
    var plan = new LoadPlan(List.of(0, 3, 0, 3, 0, 3), List.of(0.0), false, 1);
    var taken =
        take(
            seed,
            "heron-wrong-collet-side-load",
            new Nose(1 / 0.38e6, 0, 0, 3 * UM, 0),
            Shank.clean(3.175 * MM, STEEL, 10 * MM).gripped(1.2 * MM),
            plan);
    var text =
        head(
            "Heron, the 1/8 in shank forced into the 3 mm collet, one load",
            "2026-03-10",
            "Heron 1/8 in in 3 mm",
            "Only to see; three weights at once, three times.");
    return finished(
        "heron-wrong-collet-side-load",
        text,
        "1/8 in",
        taken,
        List.of(DemoTrial.Truth.stiffness("stiffness", taken.stiffness())));
  }

  private static DemoTrial wren(long seed) {
    var taken =
        take(
            seed,
            "wren-side-load",
            new Nose(1 / 0.31e6, 3 * UM, 0.5, 3 * UM, 0),
            Shank.clean(3 * MM, STEEL, 10 * MM).gripped(0.8 * MM),
            FOUR.bothWays());
    var text =
        head(
            "Wren with a 3 mm collet pushed both ways, up and down",
            "2026-03-12",
            "Wren 3 mm",
            "The same pin as for the runout.");
    return finished("wren-side-load", text, "3 mm", taken, both(taken, true));
  }

  private static DemoTrial dunlin(long seed) {
    var taken =
        take(
            seed,
            "dunlin-side-load",
            new Nose(1 / 0.19e6, 24 * UM, 0.3, 2 * UM, 0),
            Shank.clean(3.175 * MM, STEEL, 10 * MM).gripped(0.8 * MM),
            FOUR.bothWays().times(2));
    var text =
        head(
            "Dunlin with a 1/8 in collet pushed both ways: it rattles",
            "2026-03-16",
            "Dunlin 1/8 in",
            "The nose can be felt to move before the lever bears. The dial was left as it was for both sides.");
    return finished("dunlin-side-load", text, "1/8 in", taken, both(taken, true));
  }

  private static DemoTrial shrike(long seed) {
    var taken =
        take(
            seed,
            "shrike-side-load",
            new Nose(1 / 0.36e6, 6 * UM, 1, 2 * UM, 0),
            Shank.clean(3.175 * MM, STEEL, 10 * MM).gripped(0.4 * MM),
            FOUR);
    var text =
        head(
            "Shrike with the split sleeve pushed one way",
            "2026-03-17",
            "Shrike sleeve",
            "Plug pulled. The clamp left no room for the lever on the other side.");
    return finished("shrike-side-load", text, "1/8 in", taken, both(taken, false));
  }

  private static List<DemoTrial.Truth> both(TakenLoad taken, boolean play) {
    var stiffness = DemoTrial.Truth.stiffness("stiffness", taken.stiffness());
    var setup = DemoTrial.Truth.stiffness("setupStiffness", taken.setupStiffness());
    return play
        ? List.of(stiffness, setup, DemoTrial.Truth.um("play", taken.nose().play()))
        : List.of(stiffness, setup);
  }

  private static TakenLoad take(long seed, String name, Nose nose, Shank shank, LoadPlan plan) {
    return LoadBench.take(Stream.of(seed, name), nose, shank, LEVER, plan, DemoDials.PLUNGER);
  }

  private static TrialText head(String title, String date, String setup, String... notes) {
    return TrialText.of("side-load", title, date, setup, notes);
  }

  private static DemoTrial finished(
      String name, TrialText text, String diameter, TakenLoad taken, List<DemoTrial.Truth> truths) {
    text.field(
        "conditions",
        "{warm-up: "
            + (name.startsWith("shrike") ? "0 min" : "15 min")
            + ", temperature: 19 degC, cleaned: yes, pin: ground pin "
            + diameter
            + ", rotor: free}");
    text.field("indicator", "plunger dial");
    text.field("load", "brass lever");
    text.field("contact", "10 mm");
    text.field("body", "{diameter: " + diameter + ", modulus: 210 GPa}");
    text.field("reference", "table");
    text.field("reaction", "table");
    if (name.equals("heron-side-load")) {
      text.field("stand", "{name: stand on the table, load: 29.4 N, moved: 0 ± 2 um}");
    }
    List<List<String>> table = LoadText.table(taken, "mm", "0.01");
    if (name.startsWith("shrike")) {
      text.readingsWithDecimalComma(table);
    } else {
      text.readings(table);
    }
    return new DemoTrial(name + ".yaml", text.text(), truths);
  }
}
