package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Stream;
import rundlauf.quantity.Unit;

/** A runout trial of the demo bench as a file, with its truth. */
final class DemoRunoutFile {
  /** A table of more rows lies in a file of its own. */
  private static final int LONG = 60;

  private DemoRunoutFile() {}

  static TrialText head(String title, String date, String setup, String... notes) {
    return TrialText.of("runout", title, date, setup, notes);
  }

  /** The whole file: {@code diameter} and {@code tip} as typed under {@code gauge}. */
  static DemoTrial finished(
      String name,
      TrialText text,
      String diameter,
      String tip,
      String angleLimit,
      TakenRunout taken,
      String dial) {
    text.field("gauge", "{diameter: " + diameter + ", tip: " + tip + "}");
    text.field("indicator", dial);
    text.field("angle-limit", angleLimit);
    boolean inch = dial.startsWith("inch");
    List<List<String>> table = RunoutText.table(taken, inch ? "thou" : "mm", inch ? "0.5" : "0.01");
    if (table.size() > LONG) {
      text.field("readings", name + ".csv");
      String csv = String.join("\n", TrialText.aligned(table, ",")) + "\n";
      return new DemoTrial(
          name + ".yaml",
          text.text(),
          Optional.of(csv),
          truths(name, taken, TrialText.millimetres(tip)));
    }
    boolean bumped = name.equals("wren-runout-owner");
    text.readings(bumped ? RunoutText.withStruck(table, 17, "0.31", "leaned on the table") : table);
    return new DemoTrial(
        name + ".yaml", text.text(), truths(name, taken, TrialText.millimetres(tip)));
  }

  private static List<DemoTrial.Truth> truths(String name, TakenRunout taken, double tip) {
    List<DemoTrial.Truth> all = new ArrayList<>();
    for (int i = 0; i < taken.sweeps().size(); i++) {
      TakenRunout.Sweep s = taken.sweeps().get(i);
      String at = "stations[" + i + "].";
      all.add(DemoTrial.Truth.um(at + "tir", taken.tir(s)));
      if (s.swing().isEmpty()) {
        all.add(DemoTrial.Truth.um(at + "eccentricity", s.truth().amplitude()));
        all.add(DemoTrial.Truth.degrees(at + "highSpot", s.truth().highSpot()));
      }
    }
    List<Double> stations =
        taken.sweeps().stream().map(TakenRunout.Sweep::station).distinct().toList();
    if (stations.size() > 1) {
      all.addAll(axis(taken, tip));
    }
    if (clocked(taken)) {
      all.addAll(parts(taken.holding(), stations.get(0)));
    }
    if (taken.sweeps().get(0).swing().isEmpty() && taken.holding().clampingScatter() > 0) {
      all.addAll(next(name, taken, stations.size() > 1 ? tip : stations.get(0)));
    }
    return all;
  }

  /** Whether both collet and shank were turned, so that all parts stand alone. */
  private static boolean clocked(TakenRunout taken) {
    return taken.sweeps().stream().map(s -> s.clocks().collet()).distinct().count() > 1
        && taken.sweeps().stream().map(s -> s.clocks().shank()).distinct().count() > 1;
  }

  private static List<DemoTrial.Truth> parts(Holding holding, double station) {
    List<DemoTrial.Truth> all = new ArrayList<>();
    for (Part part : List.of(holding.spindle(), holding.collet(), holding.shank())) {
      String at = "parts[" + all.size() / 2 + "].";
      all.add(DemoTrial.Truth.um(at + "eccentricity", part.at(station, 0).amplitude()));
      all.add(DemoTrial.Truth.degrees(at + "highSpot", part.at(station, 0).highSpot()));
    }
    return all;
  }

  private static List<DemoTrial.Truth> axis(TakenRunout taken, double tip) {
    Offset at = taken.meanAt(tip);
    return List.of(
        new DemoTrial.Truth(
            "axis.tilt", taken.meanTilt().amplitude(), Unit.MICROMETRE_PER_MILLIMETRE),
        DemoTrial.Truth.degrees("axis.tiltHighSpot", taken.meanTilt().highSpot()),
        DemoTrial.Truth.um("axis.tip.tir", 2 * at.amplitude()),
        DemoTrial.Truth.um("axis.tip.eccentricity", at.amplitude()),
        DemoTrial.Truth.degrees("axis.tip.highSpot", at.highSpot()));
  }

  private static List<DemoTrial.Truth> next(String name, TakenRunout taken, double height) {
    Offset next = taken.nextClamping(height, Stream.of(DemoBench.SEED, name + " next clamping"));
    List<DemoTrial.Truth> all = new ArrayList<>();
    boolean again =
        taken.sweeps().stream()
            .anyMatch(s -> s.clamping() > 1 && s.clocks().equals(taken.sweeps().get(0).clocks()));
    if (again || clocked(taken)) {
      Holding h = taken.holding();
      double sd = Math.hypot(h.clampingScatter(), h.tiltScatter() * height);
      all.add(DemoTrial.Truth.um("clampingScatter", sd));
    }
    all.add(DemoTrial.Truth.um("nextClamping.eccentricity", next.amplitude()));
    all.add(DemoTrial.Truth.um("nextClamping.tir", 2 * next.amplitude()));
    if (clocked(taken)) {
      all.add(DemoTrial.Truth.um("bestClocking.insteadOf", 2 * next.amplitude()));
    }
    return all;
  }
}
