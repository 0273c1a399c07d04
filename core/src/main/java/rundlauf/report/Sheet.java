package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Reduced;

/**
 * A trial and its place in the report.
 *
 * @param number from 1, in the bench's order; makes its ids unique
 * @param folder the bench's, as the user named it, with its last slash
 * @param rotation its spindle's, seen from above: {@code cw} or {@code ccw}, where it is said
 */
record Sheet(int number, String folder, Outcome outcome, Optional<String> rotation) {
  /**
   * Whether the running direction is clockwise for one who looks at the nose from the tool's side.
   * Where no rotation is said the spindle is taken to run clockwise seen from above, as M3 has it.
   */
  boolean forwardIsClockwise() {
    return rotation.filter("ccw"::equals).isPresent();
  }

  String kind() {
    return outcome.trial().kind();
  }

  /** Its kind, where that is one of those that are reduced. */
  Optional<TrialKind> reducedKind() {
    return TrialKind.ofWord(kind().strip());
  }

  Optional<Reduced> reduced() {
    return outcome instanceof Outcome.Figures f ? Optional.of(f.reduced()) : Optional.empty();
  }

  /** Id of the section with its figures. */
  String section() {
    return "trial-" + number;
  }

  /** Id of the section with what was typed. */
  String readings() {
    return "readings-" + number;
  }

  /** Id of one typed line; of all readings where no row stands on that line. */
  String line(int line) {
    boolean there =
        outcome.trial().readings().stream()
            .flatMap(table -> table.rows().stream())
            .anyMatch(row -> row.place().line() == line);
    return there ? readings() + "-line-" + line : readings();
  }

  /** Id of the section that tells how its figures were made. */
  String method() {
    return Methods.id(kind());
  }

  /** Id of its n-th chart. */
  String chart(String name) {
    return "chart-" + number + "-" + name;
  }

  /** A figure with its two links. */
  Cell shown(Figure figure) {
    return new Cell.Shown(figure, readings(), method(), figure(figure));
  }

  /** The id of a figure of this trial; empty text where it is none of its own. */
  private String figure(Figure shown) {
    return reduced().stream()
        .flatMap(r -> r.figures().entrySet().stream())
        .filter(f -> f.getValue() == shown)
        .findFirst()
        .map(f -> "figure-" + number + "-" + f.getKey())
        .orElse("");
  }

  /** The trial's file within the bench. */
  String file() {
    return within(outcome.trial().file());
  }

  /** A file's name without the bench's folder: the report does not depend on where that lies. */
  String within(String file) {
    return file.startsWith(folder) ? file.substring(folder.length()) : file;
  }

  /** The kinds of cause in a figure's doubt, largest first. */
  List<CauseGroup> causes(Figure figure) {
    return CauseGroup.of(figure, outcome.trial().name());
  }

  /** When the trial was taken, as typed; empty text where it is not said. */
  String date() {
    return reduced().flatMap(r -> r.head().date()).orElse("");
  }

  /** The last by date, of several at one date the last in the bench; of at least one. */
  static Sheet last(List<Sheet> sheets) {
    Sheet last = sheets.get(0);
    for (Sheet sheet : sheets) {
      last = sheet.date().compareTo(last.date()) >= 0 ? sheet : last;
    }
    return last;
  }
}
