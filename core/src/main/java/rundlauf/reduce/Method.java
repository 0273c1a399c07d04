package rundlauf.reduce;

import rundlauf.readings.TrialKind;

/**
 * How the figures of a kind of trial are made.
 *
 * @param page that tells it, among docs/methods
 * @param version raised whenever the same readings give other figures
 */
public record Method(String page, int version) {
  /** The method by which trials of this kind are reduced. */
  public static Method of(TrialKind kind) {
    return new Method("docs/methods/" + kind.word() + ".md", version(kind));
  }

  private static int version(TrialKind kind) {
    return switch (kind) {
      case RUNOUT, SIDE_LOAD, AXIAL, GROWTH, SPEED, INSPECTION -> 1;
    };
  }
}
