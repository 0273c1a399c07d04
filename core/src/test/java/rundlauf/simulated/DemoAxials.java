package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Stream;

/** The demo bench's axial trials: the lever of the side loads, set beneath the nose. */
final class DemoAxials {
  private static final double UM = 1e-6;
  private static final double MM = 1e-3;
  private static final Lever LEVER = new Lever(0.25, 0.0005, 180 * MM, 0.5 * MM, 60 * MM, 0.5 * MM);
  private static final LoadPlan FOUR = LoadPlan.oneSided(4).andBack();

  /** The dial touches the nut: no shank is between it and the nose. */
  private static final Shank NONE = Shank.clean(3 * MM, Double.POSITIVE_INFINITY, 0);

  private DemoAxials() {}

  static List<DemoTrial> all(long seed) {
    return List.of(heron(seed), dunlin(seed));
  }

  private static DemoTrial heron(long seed) {
    var nose = new Nose(1 / 2.4e6, 0, 0, 1 * UM, 0);
    var text =
        head(
            "Heron pushed up and pulled down along its axis",
            "2026-03-09",
            "Heron 3 mm",
            "Plug pulled, rotor held by a pin. Lever beneath the nut; for the pulls a brass hook over its flange.");
    return finished("heron-axial", text, take(seed, "heron-axial", nose, FOUR.bothWays().times(2)));
  }

  private static DemoTrial dunlin(long seed) {
    var nose = new Nose(1 / 0.8e6, 65 * UM, 0.8, 3 * UM, 0);
    var text =
        head(
            "Dunlin pushed up and pulled down along its axis: it clicks",
            "2026-03-16",
            "Dunlin 1/8 in",
            "Plug pulled, rotor held by a pin. It drops by its own weight and clicks when lifted.");
    return finished("dunlin-axial", text, take(seed, "dunlin-axial", nose, FOUR.bothWays()));
  }

  private static TakenLoad take(long seed, String name, Nose nose, LoadPlan plan) {
    return LoadBench.take(Stream.of(seed, name), nose, NONE, LEVER, plan, DemoDials.PLUNGER);
  }

  private static TrialText head(String title, String date, String setup, String... notes) {
    return TrialText.of("axial", title, date, setup, notes);
  }

  private static DemoTrial finished(String name, TrialText text, TakenLoad taken) {
    text.field("conditions", "{warm-up: 15 min, temperature: 19 degC, rotor: locked}");
    text.field("indicator", "plunger dial");
    text.field("load", "brass lever");
    text.field("reference", "mount");
    text.field("reaction", "table");
    text.readings(table(taken));
    return new DemoTrial(
        name + ".yaml",
        text.text(),
        List.of(
            DemoTrial.Truth.um("endPlay", taken.nose().play()),
            DemoTrial.Truth.stiffness("axialStiffness", taken.stiffness()),
            DemoTrial.Truth.um("hysteresis", taken.nose().hysteresis())));
  }

  private static List<List<String>> table(TakenLoad taken) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("count", "direction", "place", "branch", "reading_mm"));
    for (TakenLoad.Row r : taken.rows()) {
      rows.add(
          List.of(
              Integer.toString(r.count()),
              r.direction() == 0 ? "push" : "pull",
              "nut",
              r.falling() ? "down" : "up",
              TrialText.steps(r.step(), "0.01")));
    }
    return rows;
  }
}
