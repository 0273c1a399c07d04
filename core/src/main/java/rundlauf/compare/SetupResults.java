package rundlauf.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.reduce.Reduced;

/**
 * A setup and what is known of it.
 *
 * @param name of the setup
 * @param results at most one of each kind
 */
public record SetupResults(String name, List<Reduced> results) {
  public SetupResults {
    results = List.copyOf(results);
  }

  /**
   * The latest result of each kind.
   *
   * @param all results in the order of their files; the later date counts, of equal or missing
   *     dates the later file
   */
  public static SetupResults latest(String name, List<Reduced> all) {
    Map<String, Reduced> byKind = new LinkedHashMap<>();
    for (Reduced one : all) {
      byKind.merge(one.head().kind(), one, SetupResults::later);
    }
    return new SetupResults(name, new ArrayList<>(byKind.values()));
  }

  /** Dates are written year first, so that their texts sort as they do. */
  private static Reduced later(Reduced before, Reduced next) {
    String first = before.head().date().orElse("");
    return next.head().date().orElse("").compareTo(first) >= 0 ? next : before;
  }

  Optional<Reduced> of(String kind) {
    return results.stream().filter(r -> r.head().kind().equals(kind)).findFirst();
  }
}
