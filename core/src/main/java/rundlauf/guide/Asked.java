package rundlauf.guide;

import java.util.List;

/**
 * A cell that has to be typed.
 *
 * @param column its name with its unit, such as {@code reading_um}
 * @param choices the words it may hold; none where anything may be typed
 * @param needed whether it may not stay empty
 */
public record Asked(String column, Kind kind, List<String> choices, boolean needed) {
  public Asked {
    choices = List.copyOf(choices);
  }

  /** What is typed into it. */
  public enum Kind {
    NUMBER,
    CHOICE,
    TEXT
  }
}
