package rundlauf.reduce;

import java.util.Map;
import java.util.TreeMap;
import rundlauf.readings.TrialKind;

/**
 * How the figures of a kind of trial are made.
 *
 * @param page that tells it, among docs/methods
 * @param version raised whenever the same readings give other figures
 */
public record Method(String page, int version) {
  private static final Map<TrialKind, Integer> VERSIONS = versions();

  private static Map<TrialKind, Integer> versions() {
    Map<TrialKind, Integer> versions = new TreeMap<>();
    for (TrialKind kind : TrialKind.values()) {
      versions.put(kind, 1);
    }
    return versions;
  }

  /** The method by which trials of this kind are reduced. */
  public static Method of(TrialKind kind) {
    return new Method("docs/methods/" + kind.word() + ".md", VERSIONS.get(kind));
  }
}
