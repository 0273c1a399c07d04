package rundlauf.simulated;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A trial file as a user would have typed it, line by line. */
final class TrialText {
  /** In the title and the notes of everything made on paper. */
  private static final String LABEL = "Invented: no such measurement was ever made.";

  private final List<String> lines = new ArrayList<>();

  private TrialText() {}

  /** Begins with kind, title and what every trial says of itself. */
  static TrialText of(String kind, String title, String date, String setup, String... notes) {
    var text = new TrialText();
    text.field("trial", kind);
    text.field("title", "\"" + title + " (invented)\"");
    text.field("date", date);
    text.field("setup", setup);
    text.lines.add("notes: |");
    text.lines.add("  " + LABEL);
    for (String note : notes) {
      text.lines.add("  " + note);
    }
    return text;
  }

  TrialText field(String name, String value) {
    lines.add(name + ": " + value);
    return this;
  }

  /** The table of readings, within the file. */
  TrialText readings(List<List<String>> table) {
    lines.add("readings: |");
    aligned(table, ", ").forEach(row -> lines.add("  " + row));
    return this;
  }

  /** The table as typed where a comma parts whole from decimal: cells are parted by semicolons. */
  TrialText readingsWithDecimalComma(List<List<String>> table) {
    lines.add("readings: |");
    aligned(table, "; ").forEach(row -> lines.add("  " + row.replace('.', ',')));
    return this;
  }

  /** A table's lines, in columns that line up. */
  static List<String> aligned(List<List<String>> table, String parting) {
    int[] widths = new int[table.get(0).size()];
    for (List<String> row : table) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    List<String> aligned = new ArrayList<>();
    for (List<String> row : table) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < widths.length; i++) {
        cells.add(" ".repeat(widths[i] - row.get(i).length()) + row.get(i));
      }
      aligned.add(String.join(parting, cells).stripTrailing());
    }
    return aligned;
  }

  String text() {
    return String.join("\n", lines) + "\n";
  }

  /** So many steps of a grid, without rounding noise: {@code 7, "0.01"} is 0.07. */
  static String steps(long count, String grid) {
    return new BigDecimal(grid).multiply(BigDecimal.valueOf(count)).toPlainString();
  }

  /** At most {@code digits} decimals, none that are zero at the end. */
  static String number(double value, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** What {@code 18 mm} is in metres. */
  static double millimetres(String typed) {
    return Double.parseDouble(typed.replace(" mm", "")) * 1e-3;
  }

  static String degrees(double radians) {
    return number(Math.toDegrees(radians), 1);
  }
}
