package rundlauf.readings;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rundlauf.quantity.Place;

/** An inspection understood: every item with its state. */
public record InspectionReadings(TrialHead head, List<Item> items) {
  public InspectionReadings {
    items = List.copyOf(items);
  }

  /**
   * One item of the list.
   *
   * @param place where it was typed
   */
  public record Item(
      String item, State state, Optional<String> value, Optional<String> note, Place place) {
    public int line() {
      return place.line();
    }
  }

  /** What was found. */
  public enum State {
    GOOD,
    FAULT,
    UNCHECKED;

    /** As it is typed. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The words for all of them. */
    public static List<String> words() {
      return Arrays.stream(values()).map(State::word).toList();
    }

    /**
     * The state of a word.
     *
     * @param word one of {@link #words()}
     */
    public static State of(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
  }
}
