package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;

/** The table of a runout trial as typed. */
final class RunoutText {
  private final TakenRunout taken;
  private final String unit;
  private final String grid;
  private final boolean clampings;
  private final boolean clocked;

  private RunoutText(TakenRunout taken, String unit, String grid) {
    this.taken = taken;
    this.unit = unit;
    this.grid = grid;
    this.clampings = taken.sweeps().stream().anyMatch(s -> s.clamping() > 1);
    this.clocked =
        taken.sweeps().stream().anyMatch(s -> s.clocks().collet() != 0 || s.clocks().shank() != 0);
  }

  /**
   * The rows, header first.
   *
   * @param unit of the readings, such as {@code mm}
   * @param grid the dial's grid in that unit, such as {@code 0.01}
   */
  static List<List<String>> table(TakenRunout taken, String unit, String grid) {
    return new RunoutText(taken, unit, grid).table();
  }

  /** The table with one more row after row {@code after}: its reading bad, and struck out. */
  static List<List<String>> withStruck(
      List<List<String>> table, int after, String reading, String reason) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < table.size(); i++) {
      rows.add(with(table.get(i), i == 0 ? "struck" : "", i == 0 ? "reason" : ""));
      if (i == after) {
        List<String> bad = with(table.get(i), "yes", reason);
        bad.set(table.get(0).size() - 1, reading);
        rows.add(bad);
      }
    }
    return rows;
  }

  private static List<String> with(List<String> row, String struck, String reason) {
    List<String> longer = new ArrayList<>(row);
    longer.add(struck);
    longer.add(reason);
    return longer;
  }

  private List<List<String>> table() {
    boolean swings = taken.sweeps().get(0).swing().isPresent();
    List<List<String>> rows = new ArrayList<>();
    rows.add(header(swings));
    for (TakenRunout.Sweep s : taken.sweeps()) {
      if (swings) {
        List<String> row = front(s);
        row.add(TrialText.steps((long) s.swing().getAsDouble(), grid));
        rows.add(row);
        continue;
      }
      for (int i = 0; i < s.steps().size(); i++) {
        List<String> row = front(s);
        row.add(TrialText.degrees(s.angles().get(i)));
        row.add(TrialText.steps(s.steps().get(i), grid));
        rows.add(row);
      }
    }
    return rows;
  }

  private List<String> header(boolean swings) {
    List<String> header = new ArrayList<>();
    if (clampings) {
      header.add("clamping");
    }
    if (clocked) {
      header.add("collet_deg");
      header.add("shank_deg");
    }
    header.add("station_mm");
    if (swings) {
      header.add("swing_" + unit);
    } else {
      header.add("angle_deg");
      header.add("reading_" + unit);
    }
    return header;
  }

  private List<String> front(TakenRunout.Sweep s) {
    List<String> row = new ArrayList<>();
    if (clampings) {
      row.add(Integer.toString(s.clamping()));
    }
    if (clocked) {
      row.add(TrialText.degrees(s.clocks().collet()));
      row.add(TrialText.degrees(s.clocks().shank()));
    }
    row.add(TrialText.number(s.station() * 1e3, 1));
    return row;
  }
}
