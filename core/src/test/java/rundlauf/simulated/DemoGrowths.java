package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Stream;
import rundlauf.quantity.Unit;

/** The demo bench's growth trial: a nose that comes down as its spindle warms. */
final class DemoGrowths {
  private static final double UM = 1e-6;
  private static final double MINUTE = 60;
  private static final List<Integer> MINUTES =
      List.of(0, 1, 2, 4, 6, 8, 10, 12, 15, 18, 21, 25, 30, 35, 40, 45, 50, 55, 60);

  private DemoGrowths() {}

  static List<DemoTrial> all(long seed) {
    return List.of(heron(seed));
  }

  private static DemoTrial heron(long seed) {
    double growth = 46 * UM;
    double timeConstant = 9 * MINUTE;
    double warmth = 21.5;
    var text =
        TrialText.of(
            "growth",
            "Heron idling from cold, the dial beneath a ball on its nose",
            "2026-03-09",
            "Heron 3 mm",
            "Stopped for each reading, turned to its mark and started again; guard down between. Case felt with a stick-on thermometer.");
    text.field("conditions", "{warm-up: 0 min, temperature: 19 degC, turned-by: running}");
    text.field("indicator", "plunger dial");
    text.field("reference", "table");
    List<Double> surface = new ArrayList<>();
    MINUTES.forEach(m -> surface.add(growth * done(m, timeConstant)));
    Stream stream = Stream.of(seed, "heron-growth");
    Dial dial = DemoDials.PLUNGER;
    List<Long> steps = dial.steps(surface, dial.beginning(stream), stream);
    text.readings(table(steps, timeConstant, warmth));
    return new DemoTrial(
        "heron-growth.yaml",
        text.text(),
        List.of(
            DemoTrial.Truth.um("growth", growth),
            new DemoTrial.Truth("timeConstant", timeConstant, Unit.MINUTE),
            new DemoTrial.Truth("settledAfter", 3 * timeConstant, Unit.MINUTE),
            new DemoTrial.Truth("perKelvin", growth / warmth, Unit.MICROMETRE_PER_KELVIN)));
  }

  private static double done(int minutes, double timeConstant) {
    return -Math.expm1(-minutes * MINUTE / timeConstant);
  }

  private static List<List<String>> table(List<Long> steps, double timeConstant, double warmth) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("time_min", "reading_mm", "temperature_degC"));
    for (int i = 0; i < steps.size(); i++) {
      long halves = Math.round(2 * (19 + warmth * done(MINUTES.get(i), timeConstant)));
      rows.add(
          List.of(
              Integer.toString(MINUTES.get(i)),
              TrialText.steps(steps.get(i), "0.01"),
              TrialText.steps(halves, "0.5")));
    }
    return rows;
  }
}
