package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Stream;
import rundlauf.quantity.Unit;
import rundlauf.simulated.BodyRow.Joint;
import rundlauf.simulated.TakenRow.Placed;
import rundlauf.simulated.TakenRow.Spot;

/** The demo bench's side-load trial that touches every body: whose joint gives way. */
final class DemoRows {
  private static final double UM = 1e-6;
  private static final double MM = 1e-3;
  private static final Lever LEVER = new Lever(0.25, 0.0005, 180 * MM, 0.5 * MM, 60 * MM, 0.5 * MM);
  private static final String NAME = "wren-joints-side-load";

  /** Together as soft as Wren's other side load finds it; the mount is to blame. */
  private static final BodyRow WREN =
      new BodyRow(
          List.of(
              joint(0.1, 0.1, 6),
              joint(0.15, 0.2, 30),
              joint(1.9, 0.5, 52),
              new Joint(1e-6 / 0.31 - 2.95 * UM, 0, 52 * MM)));

  private static final List<Spot> SPOTS =
      List.of(
          new Spot("shank", 10 * MM),
          new Spot("nut", -1 * MM),
          new Spot("nut", -14 * MM),
          new Spot("housing", -20 * MM),
          new Spot("mount", -38 * MM),
          new Spot("mount", -66 * MM));

  private DemoRows() {}

  /**
   * Shift and tilt, each by what it adds at the load [µm/N], about a middle [mm behind the nut].
   */
  private static Joint joint(double shift, double tilt, double middle) {
    double arm = (middle + 10) * MM;
    return new Joint(shift * UM, tilt * UM / (arm * arm), middle * MM);
  }

  static List<DemoTrial> all(long seed) {
    TakenRow taken =
        TakenRow.take(
            Stream.of(seed, NAME),
            WREN,
            Shank.clean(3 * MM, 210e9, 10 * MM).gripped(0.8 * MM),
            new Nose(0, 3 * UM, 0.5, 3 * UM, 0),
            LEVER,
            LoadPlan.oneSided(6).andBack().bothWays(),
            DemoDials.PLUNGER,
            SPOTS);
    var text =
        TrialText.of(
            "side-load",
            "Wren pushed both ways, the dial moved from body to body: which joint gives way",
            "2026-03-11",
            "Wren 3 mm",
            "Plug pulled. The cover leaves room for the dial at one place of the housing only.",
            "Distances from the nut's front face; behind it negative.");
    text.field(
        "conditions",
        "{warm-up: 15 min, temperature: 19 degC, cleaned: yes, pin: ground pin 3 mm, rotor: free}");
    text.field("indicator", "plunger dial");
    text.field("load", "brass lever");
    text.field("contact", "10 mm");
    text.field("body", "{diameter: 3 mm, modulus: 210 GPa}");
    text.field("reference", "table");
    text.field("reaction", "table");
    text.readings(table(taken));
    return List.of(new DemoTrial(NAME + ".yaml", text.text(), truths(taken)));
  }

  private static List<List<String>> table(TakenRow taken) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("at_mm", "place", "count", "direction_deg", "branch", "reading_mm"));
    for (Placed placed : taken.places()) {
      for (TakenLoad.Row r : placed.taken().rows()) {
        rows.add(
            List.of(
                TrialText.number(placed.spot().at() / MM, 1),
                placed.spot().place(),
                Integer.toString(r.count()),
                TrialText.degrees(r.direction()),
                r.falling() ? "down" : "up",
                TrialText.steps(r.step(), "0.01")));
      }
    }
    return rows;
  }

  private static List<DemoTrial.Truth> truths(TakenRow taken) {
    List<DemoTrial.Truth> all = new ArrayList<>();
    all.add(DemoTrial.Truth.stiffness("stiffness", 1 / taken.whole()));
    double rigid = taken.whole() - taken.shank().compliance();
    all.add(DemoTrial.Truth.stiffness("setupStiffness", 1 / rigid));
    all.add(DemoTrial.Truth.um("play", 3 * UM));
    share(all, 0, taken.shank().compliance(), taken);
    for (int i = 0; i < 4; i++) {
      share(all, i + 1, taken.share(i) * taken.whole(), taken);
    }
    return all;
  }

  private static void share(List<DemoTrial.Truth> all, int i, double compliance, TakenRow taken) {
    String path = "shares[" + i + "]";
    all.add(new DemoTrial.Truth(path + ".compliance", compliance, Unit.MICROMETRE_PER_NEWTON));
    all.add(new DemoTrial.Truth(path + ".share", compliance / taken.whole(), Unit.ONE));
  }
}
