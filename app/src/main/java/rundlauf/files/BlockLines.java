package rundlauf.files;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import rundlauf.bench.Entry;

/** The lines of a block text, each with its line and indent in the document around it. */
final class BlockLines {
  private BlockLines() {}

  static Iterator<Line> of(Entry.Scalar block, String document) {
    List<String> around = document.lines().toList();
    List<Line> lines = new ArrayList<>();
    int number = block.place().line();
    for (String text : block.text().lines().toList()) {
      number++; // the first line of the text is the one behind the bar
      String whole = number <= around.size() ? around.get(number - 1) : text;
      lines.add(new Line(text, number, Math.max(0, whole.length() - text.length())));
    }
    return lines.iterator();
  }
}
