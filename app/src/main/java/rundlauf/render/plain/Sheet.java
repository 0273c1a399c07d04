package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Shown;
import rundlauf.render.Sentences;

/** Text being laid out: headings, rows of a label and a figure, wrapped sentences. */
final class Sheet {
  /** Our choice: fits a terminal of 80 columns with room to spare. */
  static final int WIDTH = 78;

  private static final int LABEL_WIDTH = 26;
  private static final String INDENT = "  ";

  private final StringBuilder text = new StringBuilder();
  private final Set<Saying> saidBelow;
  private final Set<Saying> saidAbove = new LinkedHashSet<>();

  /**
   * An empty sheet.
   *
   * @param saidBelow what the advice at the end says: a missing figure only points there
   */
  Sheet(List<Saying> saidBelow) {
    this.saidBelow = new LinkedHashSet<>(saidBelow);
  }

  String word(String code, Arg... args) {
    return Sentences.text(Saying.of(code, "", args));
  }

  /** A line as it is. */
  void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** A heading with a blank line before it. */
  void heading(String code, Arg... args) {
    line("");
    line(word(code, args));
  }

  /** A paragraph, wrapped. */
  void paragraph(String words) {
    wrapped("", "", words);
  }

  /** Figures by their label's code, under a heading. */
  void group(String headingCode, List<Arg> headingArgs, Map<String, Figure> figures) {
    heading(headingCode, headingArgs.toArray(Arg[]::new));
    figures(figures);
  }

  /** The rows of a group: what is known, then in one row each what is not, by its reason. */
  void figures(Map<String, Figure> figures) {
    Map<Saying, List<String>> missing = new LinkedHashMap<>();
    figures.forEach(
        (labelCode, figure) -> {
          if (figure instanceof Missing gone) {
            missing.computeIfAbsent(gone.why(), why -> new ArrayList<>()).add(word(labelCode));
          } else {
            figure(word(labelCode), figure);
          }
        });
    missing.forEach((why, labels) -> missing(labels, why));
  }

  /** A row: label and figure, or why there is none. */
  void figure(String label, Figure figure) {
    if (figure instanceof Missing gone) {
      missing(List.of(label), gone.why());
    } else {
      row(label, value(figure));
    }
  }

  /** A known figure with its range. */
  String value(Figure figure) {
    return FigureText.of(Shown.of(figure).orElseThrow());
  }

  /** What is not known, and why; a reason that stands elsewhere on the sheet is only pointed to. */
  private void missing(List<String> labels, Saying why) {
    missing(labels, "not-known", why);
  }

  /**
   * The same in other words.
   *
   * @param known code of the words, with {@code -below} and {@code -above} for a reason that stands
   *     there
   */
  void missing(List<String> labels, String known, Saying why) {
    String code =
        says(saidBelow, why) ? known + "-below" : says(saidAbove, why) ? known + "-above" : known;
    String reason = code.equals(known) ? " " + Sentences.text(why) : "";
    wrapped(INDENT, INDENT + INDENT, String.join(", ", labels) + ": " + word(code) + reason);
    saidAbove.add(why);
  }

  /** Rows of cells, every column but the last as wide as its widest cell. */
  void table(List<List<String>> rows) {
    int columns = rows.get(0).size();
    for (List<String> row : rows) {
      var line = new StringBuilder(INDENT);
      for (int c = 0; c < columns; c++) {
        int at = c;
        int width = rows.stream().mapToInt(r -> r.get(at).length()).max().orElse(0);
        line.append(padded(row.get(c), width)).append(INDENT);
      }
      line(line.toString());
    }
  }

  private static boolean says(Set<Saying> said, Saying why) {
    return said.stream().anyMatch(s -> s.code().equals(why.code()) && s.args().equals(why.args()));
  }

  /** A row: label and words, wrapped under themselves. */
  void row(String label, String words) {
    String head = INDENT + padded(label, LABEL_WIDTH) + " ";
    wrapped(head, " ".repeat(LABEL_WIDTH + INDENT.length() + 1), words);
  }

  /** Sentences under a heading, or nothing when there are none. */
  void bullets(String headingCode, List<Saying> sayings) {
    if (sayings.isEmpty()) {
      return;
    }
    heading(headingCode);
    sayings.stream().map(Sentences::text).distinct().forEach(this::bullet);
  }

  void bullet(String words) {
    wrapped(INDENT + "- ", INDENT + INDENT, words);
  }

  static String padded(String words, int width) {
    return words + " ".repeat(Math.max(0, width - words.length()));
  }

  private void wrapped(String first, String next, String words) {
    var line = new StringBuilder(first);
    boolean bare = true;
    for (String word : words.strip().split("\\s+")) {
      if (!bare && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line.setLength(0);
        line.append(next);
        bare = true;
      }
      line.append(bare ? "" : " ").append(word);
      bare = false;
    }
    line(line.toString());
  }

  String text() {
    return text.toString();
  }
}
