package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.safety.Inspection;

/** Whether a spindle may be powered, by the last inspection taken on any of its setups. */
enum SpindleState {
  HELD("report-state-held"),
  NOT_INSPECTED("report-state-not-inspected"),
  INSPECTED("report-state-inspected");

  private final String code;

  SpindleState(String code) {
    this.code = code;
  }

  /** Code of its word. */
  String code() {
    return code;
  }

  static SpindleState of(Optional<Inspected> last) {
    if (last.isEmpty()) {
      return NOT_INSPECTED;
    }
    return last.get().inspection().hold() ? HELD : INSPECTED;
  }

  /** An inspection and the sheet it came from. */
  record Inspected(Sheet sheet, Inspection inspection) {}

  /** The last inspection of a spindle. */
  static Optional<Inspected> last(BenchResults results, List<Sheet> sheets, String spindle) {
    List<Inspected> found = new ArrayList<>();
    for (Sheet sheet : sheets) {
      if (belongs(results, sheet, spindle)
          && sheet.reduced().orElse(null) instanceof Inspection inspection) {
        found.add(new Inspected(sheet, inspection));
      }
    }
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
  }

  private static boolean belongs(BenchResults results, Sheet sheet, String spindle) {
    Optional<String> setup = sheet.outcome().setup();
    return results.setups().stream()
        .anyMatch(s -> s.spindle().equals(spindle) && setup.equals(Optional.of(s.name())));
  }
}
