package rundlauf.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.reduce.Latest;
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
    return new SetupResults(name, new ArrayList<>(Latest.byKind(all).values()));
  }

  Optional<Reduced> of(String kind) {
    return results.stream().filter(r -> r.head().kind().equals(kind)).findFirst();
  }
}
