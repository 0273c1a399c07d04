package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
      return new DemoTrial(name + ".yaml", text.text(), Optional.of(csv), truths(taken));
    }
    boolean bumped = name.equals("wren-runout-owner");
    text.readings(bumped ? RunoutText.withStruck(table, 17, "0.31", "leaned on the table") : table);
    return new DemoTrial(name + ".yaml", text.text(), truths(taken));
  }

  private static List<DemoTrial.Truth> truths(TakenRunout taken) {
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
    return all;
  }
}
