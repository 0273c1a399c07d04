package rundlauf.simulated;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The measured trials of the demo bench and their truth, made on paper from one seed. What has no
 * readings (the bench file, the inspections) is written by hand beside them.
 */
final class DemoBench {
  /** Chosen once and kept whatever it gave; any would do. */
  static final long SEED = 20_260_302L;

  private DemoBench() {}

  static List<DemoTrial> trials() {
    List<DemoTrial> all = new ArrayList<>(DemoRunouts.all(SEED));
    all.addAll(DemoLoads.all(SEED));
    all.addAll(DemoRows.all(SEED));
    all.addAll(DemoDirections.all(SEED));
    all.addAll(DemoAxials.all(SEED));
    all.addAll(DemoGrowths.all(SEED));
    all.addAll(DemoSpeeds.all(SEED));
    return all;
  }

  /** Every generated file by its path under {@code demo/}. */
  static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    for (DemoTrial trial : trials()) {
      files.put("bench/trials/" + trial.file(), trial.text());
      trial.csv().ifPresent(csv -> files.put("bench/trials/" + trial.csvFile(), csv));
    }
    files.put("truth.yaml", truth());
    return files;
  }

  private static String truth() {
    StringBuilder text = new StringBuilder();
    text.append("# What was true when the demo's readings were made. All invented.\n");
    text.append("# Written by rundlauf.simulated.DemoBench; see demo/README.md.\n");
    for (DemoTrial trial : trials()) {
      text.append(trial.file()).append(":\n");
      for (DemoTrial.Truth truth : trial.truths()) {
        double value = truth.unit().fromSi(truth.value());
        text.append("  ").append(truth.figure()).append(": ");
        text.append(TrialText.number(value, 4)).append(" ").append(truth.unit().symbol());
        text.append("\n");
      }
    }
    return text.toString();
  }
}
