package rundlauf.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.reduce.Latest;
import rundlauf.reduce.Reduced;

/**
 * A setup and what is known of it.
 *
 * @param name of the setup
 * @param results at most one of each kind
 * @param earlier the rest, later before earlier: for figures that the latest trial does not tell
 */
public record SetupResults(String name, List<Reduced> results, List<Reduced> earlier) {
  public SetupResults {
    results = List.copyOf(results);
    earlier = List.copyOf(earlier);
  }

  /** With one result of each kind at most. */
  public SetupResults(String name, List<Reduced> results) {
    this(name, results, List.of());
  }

  /**
   * The latest result of each kind, and the earlier ones.
   *
   * @param all results in the order of their files; the later date counts, of equal or missing
   *     dates the later file
   */
  public static SetupResults latest(String name, List<Reduced> all) {
    List<Reduced> results = new ArrayList<>(Latest.byKind(all).values());
    List<Reduced> earlier = new ArrayList<>(Latest.inOrder(all));
    earlier.removeAll(results);
    Collections.reverse(earlier);
    return new SetupResults(name, results, earlier);
  }

  Optional<Reduced> of(String kind) {
    return results.stream().filter(r -> r.head().kind().equals(kind)).findFirst();
  }

  /** Results of a kind, the latest first. */
  Stream<Reduced> all(String kind) {
    return Stream.concat(results.stream(), earlier.stream())
        .filter(r -> r.head().kind().equals(kind));
  }
}
