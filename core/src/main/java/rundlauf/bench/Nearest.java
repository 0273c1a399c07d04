package rundlauf.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Orders accepted names by how near they are to what was typed. */
public final class Nearest {
  private Nearest() {}

  /** The names, nearest to {@code typed} first; names equally near stay in their order. */
  public static List<String> first(String typed, List<String> names) {
    String head = typed.substring(0, Math.min(typed.length(), 64)).toLowerCase(Locale.ROOT);
    return names.stream()
        .sorted(Comparator.comparingInt(name -> distance(head, name.toLowerCase(Locale.ROOT))))
        .toList();
  }

  /**
   * Fewest letters to insert, drop or change to make one text of the other (Levenshtein's distance,
   * by rows).
   */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
