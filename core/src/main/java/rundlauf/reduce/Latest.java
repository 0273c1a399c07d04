package rundlauf.reduce;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The result that counts of several: the later date, of equal or missing dates the later in their
 * order.
 */
public final class Latest {
  private Latest() {}

  /** The latest of each kind of trial, in the order in which the kinds are first met. */
  public static Map<String, Reduced> byKind(List<? extends Reduced> all) {
    Map<String, Reduced> byKind = new LinkedHashMap<>();
    for (Reduced one : all) {
      byKind.merge(one.head().kind(), one, Latest::later);
    }
    return byKind;
  }

  /** The latest of one kind of result. */
  public static <T extends Reduced> Optional<T> of(List<? extends Reduced> all, Class<T> kind) {
    return all.stream().filter(kind::isInstance).map(kind::cast).reduce(Latest::later);
  }

  /** All of them, earlier before later; of equal dates in their order, without date first. */
  public static List<Reduced> inOrder(List<? extends Reduced> all) {
    List<Reduced> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(one -> one.head().date().orElse("")));
    return sorted;
  }

  /** Dates are written year first, so that their texts sort as they do. */
  private static <T extends Reduced> T later(T before, T next) {
    String first = before.head().date().orElse("");
    return next.head().date().orElse("").compareTo(first) >= 0 ? next : before;
  }
}
