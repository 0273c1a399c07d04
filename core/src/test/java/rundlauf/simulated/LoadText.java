package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;

/** The tables of side-load and speed trials as typed. */
final class LoadText {
  private LoadText() {}

  /**
   * The rows, header first.
   *
   * @param unit of the readings, such as {@code mm}
   * @param grid the dial's grid in that unit, such as {@code 0.01}
   */
  static List<List<String>> table(TakenLoad taken, String unit, String grid) {
    boolean anew = taken.rows().get(taken.rows().size() - 1).zeroed() > 1;
    List<List<String>> rows = new ArrayList<>();
    rows.add(row(anew, "count", "direction_deg", "branch", "zeroed", "reading_" + unit));
    for (TakenLoad.Row r : taken.rows()) {
      rows.add(
          row(
              anew,
              Integer.toString(r.count()),
              TrialText.degrees(r.direction()),
              r.falling() ? "down" : "up",
              Integer.toString(r.zeroed()),
              TrialText.steps(r.step(), grid)));
    }
    return rows;
  }

  private static List<String> row(
      boolean anew, String count, String direction, String branch, String zeroed, String reading) {
    return anew
        ? List.of(count, direction, branch, zeroed, reading)
        : List.of(count, direction, branch, reading);
  }

  /** A speed trial's rows, header first; speeds read to whole steps of {@code grid} rpm. */
  static List<List<String>> speeds(TakenSpeed taken, String setting, String grid) {
    boolean power = taken.rows().stream().anyMatch(r -> r.power().isPresent());
    List<List<String>> rows = new ArrayList<>();
    rows.add(power ? List.of(setting, "speed_rpm", "power_W") : List.of(setting, "speed_rpm"));
    for (TakenSpeed.Row r : taken.rows()) {
      List<String> row = new ArrayList<>();
      row.add(TrialText.number(r.setting(), 2));
      row.add(TrialText.steps(r.steps(), grid));
      r.power().ifPresent(w -> row.add(TrialText.number(w, 0)));
      rows.add(row);
    }
    return rows;
  }
}
