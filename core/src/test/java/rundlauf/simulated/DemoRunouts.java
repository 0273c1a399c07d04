package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Stream;

/** The demo bench's runout trials. */
final class DemoRunouts {
  private static final double UM = 1e-6;
  private static final double MM = 1e-3;

  private DemoRunouts() {}

  private static Holding holding(
      double amplitudeUm, double highSpotDeg, double tiltUmPerMm, double tiltDeg) {
    Part spindle =
        Part.offset(amplitudeUm * UM, Math.toRadians(highSpotDeg))
            .tilted(tiltUmPerMm * 1e-3, Math.toRadians(tiltDeg));
    return new Holding(spindle, Part.TRUE, Part.TRUE, List.of(), 0, 0);
  }

  static List<DemoTrial> all(long seed) {
    return List.of(
        heronThree(seed),
        heronEighth(seed),
        heronWrongCollet(seed),
        wrenClocked(seed),
        wrenOwner(seed),
        wrenApprentice(seed),
        wrenVTool(seed),
        dunlinForm(seed),
        dunlinCollet(seed),
        dunlinChuck(seed),
        shrike(seed));
  }

  private static DemoTrial heronThree(long seed) {
    var plan = RunoutPlan.oneTurn(5 * MM, 8).at(5 * MM, 15 * MM, 25 * MM).clampedTimes(3);
    var truth = holding(8, 70, 0.30, 100).withScatter(2.5 * UM, 0.08e-3);
    var taken = take(seed, "heron-3mm-runout", truth, plan.repeatingFirst(), DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Heron with a 3 mm collet: runout at three heights, clamped three times",
            "2026-03-09",
            "Heron 3 mm",
            "Ground pin in the collet, wiped each time; nut to the same mark on the spanner.",
            "The dial's foot stands on the table; spindle turned by hand with the drive switched off and unplugged.");
    text.field(
        "conditions",
        "{warm-up: 20 min, temperature: 19 degC, nut: 8 N m, cleaned: yes, pin: ground pin 3 mm,"
            + " turned-by: hand, rotor: free}");
    return DemoRunoutFile.finished(
        "heron-3mm-runout", text, "3 mm", "18 mm", "3 deg", taken, "plunger dial");
  }

  private static DemoTrial heronEighth(long seed) {
    var plan = RunoutPlan.oneTurn(16 * MM, 8).clamped(clocked());
    var truth =
        new Holding(
            Part.offset(7 * UM, Math.toRadians(70)),
            Part.offset(13 * UM, Math.toRadians(200)),
            Part.offset(3 * UM, Math.toRadians(20)),
            List.of(),
            1.5 * UM,
            0);
    var taken = take(seed, "heron-eighth-runout", truth, plan, DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Heron with a 1/8 in collet: which part is to blame",
            "2026-03-10",
            "Heron 1/8 in",
            "Collet and pin marked with a pen; each turned by half and quarter turns against the spindle's mark.",
            "Read 16 mm out, where the norm reads a collet of this size.");
    text.field(
        "conditions",
        "{warm-up: 20 min, temperature: 19 degC, nut: 8 N m, cleaned: yes, pin: ground pin 1/8 in,"
            + " turned-by: hand, rotor: free}");
    return DemoRunoutFile.finished(
        "heron-eighth-runout", text, "1/8 in", "18 mm", "3 deg", taken, "plunger dial");
  }

  /** Collet and shank by half turns, then by quarter turns. */
  private static RunoutPlan.Clamping[] clocked() {
    var clocks = new ArrayList<RunoutPlan.Clamping>();
    for (int[] c :
        new int[][] {
          {0, 0}, {180, 0}, {0, 180}, {180, 180}, {90, 270}, {270, 90}, {90, 90}, {270, 270}
        }) {
      clocks.add(new RunoutPlan.Clamping(Math.toRadians(c[0]), Math.toRadians(c[1])));
    }
    return clocks.toArray(RunoutPlan.Clamping[]::new);
  }

  private static DemoTrial heronWrongCollet(long seed) {
    var plan = RunoutPlan.oneTurn(5 * MM, 8).at(5 * MM, 15 * MM).repeatingFirst();
    var taken =
        take(
            seed,
            "heron-wrong-collet-runout",
            holding(23, 150, 0.9, 170).withScatter(4 * UM, 0),
            plan,
            DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Heron, a 1/8 in shank forced into the 3 mm collet",
            "2026-03-10",
            "Heron 1/8 in in 3 mm",
            "Done because the inch collet was not to hand. The nut went on with a squeak. Not to be repeated.");
    text.field(
        "conditions",
        "{warm-up: 20 min, temperature: 19 degC, nut: 12 N m, cleaned: yes, pin: ground pin 1/8 in,"
            + " turned-by: hand, rotor: free}");
    return DemoRunoutFile.finished(
        "heron-wrong-collet-runout", text, "1/8 in", "20 mm", "3 deg", taken, "plunger dial");
  }

  /** The pin stayed in the collet between the owner's and the apprentice's turn: one truth. */
  private static Holding wren() {
    return holding(44, 215, 0.5, 240);
  }

  private static DemoTrial wrenClocked(long seed) {
    var plan = RunoutPlan.oneTurn(10 * MM, 8).clamped(clocked());
    var truth =
        new Holding(
            Part.offset(45 * UM, Math.toRadians(217)),
            Part.offset(2.5 * UM, Math.toRadians(100)),
            Part.offset(1.5 * UM, Math.toRadians(300)),
            List.of(),
            1.5 * UM,
            0);
    var taken = take(seed, "wren-3mm-clocked-runout", truth, plan, DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Wren with a 3 mm collet: is it the collet?",
            "2026-03-11",
            "Wren 3 mm",
            "Collet and pin marked with a pen and turned by half and quarter turns against the spindle's mark.",
            "Read 10 mm out, where the norm reads a collet of this size.");
    text.field("conditions", WREN_CONDITIONS);
    return DemoRunoutFile.finished(
        "wren-3mm-clocked-runout", text, "3 mm", "18 mm", "3 deg", taken, "plunger dial");
  }

  private static DemoTrial wrenOwner(long seed) {
    var plan = RunoutPlan.oneTurn(8 * MM, 12).at(8 * MM, 18 * MM).repeatingFirst();
    var taken = take(seed, "wren-runout-owner", wren(), plan, DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Wren with a 3 mm collet, taken by the owner",
            "2026-03-12",
            "Wren 3 mm",
            "Twelve positions off a card ring on the nut, read twice before writing.",
            "The pin was then left in for the apprentice.");
    text.field("conditions", WREN_CONDITIONS);
    return DemoRunoutFile.finished(
        "wren-runout-owner", text, "3 mm", "18 mm", "3 deg", taken, "plunger dial");
  }

  private static DemoTrial wrenApprentice(long seed) {
    var plan = RunoutPlan.oneTurn(8 * MM, 6).at(8 * MM, 18 * MM);
    var taken = take(seed, "wren-runout-apprentice", wren(), plan, DemoDials.HURRIED);
    var text =
        DemoRunoutFile.head(
            "Wren with a 3 mm collet, taken by the apprentice",
            "2026-03-12",
            "Wren 3 mm",
            "Same pin, not touched since the owner's readings. Six positions by eye, in a hurry before lunch.",
            "The compressor ran next door.");
    text.field("conditions", WREN_CONDITIONS);
    return DemoRunoutFile.finished(
        "wren-runout-apprentice", text, "3 mm", "18 mm", "10 deg", taken, "plunger dial");
  }

  private static final String WREN_CONDITIONS =
      "{warm-up: 15 min, temperature: 20 degC, nut: 8 N m, cleaned: yes, pin: ground pin 3 mm,"
          + " turned-by: hand, rotor: free}";

  private static DemoTrial wrenVTool(long seed) {
    var plan = RunoutPlan.oneTurn(10 * MM, 8);
    var taken =
        take(
            seed,
            "wren-v-tool-runout",
            holding(40, 130, 0.6, 160).withScatter(3 * UM, 0),
            plan,
            DemoDials.LEVER);
    var text =
        DemoRunoutFile.head(
            "Wren with the V-tool: one height, with the inch lever dial",
            "2026-03-13",
            "Wren V-tool",
            "On the tool's own shank. The plunger would not fit under the clamp.");
    text.field(
        "conditions",
        "{warm-up: 15 min, temperature: 20 degC, nut: 8 N m, cleaned: yes, turned-by: hand, rotor: free}");
    return DemoRunoutFile.finished(
        "wren-v-tool-runout", text, "1/8 in", "16 mm", "3 deg", taken, "inch lever dial");
  }

  /** The old drill blank, turned in its collet by a sixth of a turn: its three lobes follow it. */
  private static DemoTrial dunlinForm(long seed) {
    var plan =
        RunoutPlan.oneTurn(12 * MM, 24)
            .clamped(new RunoutPlan.Clamping(0, 0), new RunoutPlan.Clamping(0, Math.PI / 3));
    var truth =
        new Holding(
            Part.offset(50 * UM, Math.toRadians(310)),
            Part.TRUE,
            Part.offset(9 * UM, Math.toRadians(40)),
            List.of(new Lobe(3, 9 * UM, Math.toRadians(25))),
            3 * UM,
            0);
    var taken = take(seed, "dunlin-blank-form-runout", truth, plan, DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Dunlin with the old drill blank: is the pin round?",
            "2026-03-14",
            "Dunlin 1/8 in",
            "Twenty-four positions off a card ring; the blank marked and turned by a sixth of a turn.",
            "The nose was pushed lightly to one side while reading.");
    text.field(
        "conditions",
        "{warm-up: 10 min, temperature: 18 degC, nut: 8 N m, cleaned: yes, pin: drill blank 1/8 in,"
            + " turned-by: hand, rotor: free}");
    return DemoRunoutFile.finished(
        "dunlin-blank-form-runout", text, "1/8 in", "20 mm", "3 deg", taken, "plunger dial");
  }

  private static DemoTrial dunlinCollet(long seed) {
    var plan = RunoutPlan.oneTurn(6 * MM, 9).at(6 * MM, 18 * MM).clampedTimes(2);
    var truth =
        holding(52, 310, 1.1, 280)
            .with(new Lobe(3, 5 * UM, Math.toRadians(25)))
            .withScatter(4 * UM, 0.15e-3);
    var taken = take(seed, "dunlin-eighth-runout", truth, plan, DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Dunlin with a 1/8 in collet: two heights, clamped twice",
            "2026-03-16",
            "Dunlin 1/8 in",
            "The pin is an old drill blank and perhaps not quite round.",
            "The nose can be rocked by hand; pushed lightly to one side while reading.");
    text.field(
        "conditions",
        "{warm-up: 10 min, temperature: 18 degC, nut: 8 N m, cleaned: yes, pin: drill blank 1/8 in,"
            + " turned-by: hand, rotor: free}");
    return DemoRunoutFile.finished(
        "dunlin-eighth-runout", text, "1/8 in", "20 mm", "3 deg", taken, "plunger dial");
  }

  private static DemoTrial dunlinChuck(long seed) {
    var plan = RunoutPlan.oneTurn(10 * MM, 60).clampedTimes(3).swingsOnly();
    var truth = holding(78, 20, 1.5, 60).withScatter(9 * UM, 0);
    var taken = take(seed, "dunlin-chuck-swing", truth, plan, DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Dunlin with the drill chuck: the swing only, clamped three times",
            "2026-03-16",
            "Dunlin chuck",
            "Turned slowly by hand and only the lowest and highest reading kept in mind.");
    text.field(
        "conditions",
        "{warm-up: 10 min, temperature: 18 degC, cleaned: yes, pin: ground pin 3 mm, turned-by: hand,"
            + " rotor: free}");
    return DemoRunoutFile.finished(
        "dunlin-chuck-swing", text, "3 mm", "24 mm", "3 deg", taken, "plunger dial");
  }

  private static DemoTrial shrike(long seed) {
    var plan = RunoutPlan.oneTurn(8 * MM, 8).repeatingFirst();
    var taken =
        take(
            seed,
            "shrike-runout",
            holding(47, 95, 0.7, 80).withScatter(5 * UM, 0),
            plan,
            DemoDials.PLUNGER);
    var text =
        DemoRunoutFile.head(
            "Shrike with the split sleeve: one height",
            "2026-03-17",
            "Shrike sleeve",
            "Plug pulled and hung where it can be seen; turned by hand. On hold since the inspection.");
    text.field(
        "conditions",
        "{warm-up: 0 min, temperature: 18 degC, cleaned: yes, pin: ground pin 1/8 in, turned-by: hand,"
            + " rotor: free}");
    return DemoRunoutFile.finished(
        "shrike-runout", text, "1/8 in", "20 mm", "3 deg", taken, "plunger dial");
  }

  private static TakenRunout take(
      long seed, String name, Holding truth, RunoutPlan plan, Dial dial) {
    return RunoutBench.take(Stream.of(seed, name), truth, plan, dial);
  }
}
