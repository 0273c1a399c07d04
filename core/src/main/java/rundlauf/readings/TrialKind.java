package rundlauf.readings;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rundlauf.bench.Nearest;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** The kinds of trial that can be understood. */
public enum TrialKind {
  RUNOUT,
  SIDE_LOAD,
  AXIAL,
  GROWTH,
  SPEED,
  INSPECTION;

  /** Kinds whose files may lie in a bench already, and that are not reduced yet. */
  private static final List<String> NOT_YET = List.of("sound", "tap", "test-cut");

  /** Whether the spindle runs under power while it is taken. */
  public boolean isPowered() {
    return this == GROWTH || this == SPEED;
  }

  /** As it is typed after {@code trial:}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The kind of a trial.
   *
   * @throws Refused when it is missing, unknown or not reduced yet
   */
  public static TrialKind of(Trial trial) {
    String typed = trial.kind().strip();
    Place place =
        trial
            .document()
            .get("trial")
            .map(e -> e.place())
            .orElse(trial.document().place().field("trial"));
    return ofWord(typed).orElseThrow(() -> unknown(typed, place));
  }

  /** The kind of a word; empty where it is none of theirs. */
  public static Optional<TrialKind> ofWord(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }

  private static Refused unknown(String typed, Place place) {
    List<String> words = Arrays.stream(values()).map(TrialKind::word).toList();
    if (typed.isEmpty()) {
      return Refused.at(place, "kind-missing", Arg.list(words));
    }
    return NOT_YET.contains(typed)
        ? Refused.at(place, "kind-not-yet", Arg.typed(typed), Arg.list(words))
        : Refused.at(
            place, "kind-unknown", Arg.typed(typed), Arg.list(Nearest.first(typed, words)));
  }
}
