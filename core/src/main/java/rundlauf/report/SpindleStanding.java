package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Saying;
import rundlauf.safety.Inspection;
import rundlauf.safety.Standing;

/**
 * Whether a spindle may be powered, and where that stands.
 *
 * @param last the inspection that counts, taken on any of its setups; empty where there is none
 */
record SpindleStanding(Optional<Sheet> last) {

  static SpindleStanding of(BenchResults results, List<Sheet> sheets, String spindle) {
    List<Sheet> inspections =
        sheets.stream()
            .filter(s -> belongs(results, s, spindle))
            .filter(s -> s.reduced().orElse(null) instanceof Inspection)
            .toList();
    return new SpindleStanding(
        inspections.isEmpty() ? Optional.empty() : Optional.of(Sheet.last(inspections)));
  }

  private static boolean belongs(BenchResults results, Sheet sheet, String spindle) {
    Optional<String> setup = sheet.outcome().setup();
    return results.bench().setups().stream()
        .anyMatch(s -> s.spindle().equals(spindle) && setup.equals(Optional.of(s.name())));
  }

  private List<Inspection> inspection() {
    return last.flatMap(Sheet::reduced).map(Inspection.class::cast).stream().toList();
  }

  Standing standing() {
    return Standing.of(inspection());
  }

  boolean held() {
    return standing() == Standing.HELD;
  }

  /** Why it is held; none when it is not. */
  List<Saying> because() {
    return held() ? inspection().get(0).because() : List.of();
  }
}
