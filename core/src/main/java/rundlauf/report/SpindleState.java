package rundlauf.report;

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
    List<Sheet> found =
        sheets.stream()
            .filter(s -> belongs(results, s, spindle))
            .filter(s -> s.reduced().orElse(null) instanceof Inspection)
            .toList();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Sheet last = Sheet.last(found);
    return Optional.of(new Inspected(last, (Inspection) last.reduced().orElseThrow()));
  }

  private static boolean belongs(BenchResults results, Sheet sheet, String spindle) {
    Optional<String> setup = sheet.outcome().setup();
    return results.bench().setups().stream()
        .anyMatch(s -> s.spindle().equals(spindle) && setup.equals(Optional.of(s.name())));
  }
}
