package rundlauf.bench;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import rundlauf.quantity.Refused;

/** Dates as they are typed. */
public final class DateText {
  private DateText() {}

  /**
   * What stands under {@code date}.
   *
   * @throws Refused for what is neither a day nor a day and a time (ISO 8601-1)
   */
  public static Optional<String> of(Section s) {
    Optional<String> date = s.text("date");
    if (date.isPresent() && !isDate(date.get())) {
      throw Refused.at(s.place("date"), "date-not-read", s.typed("date"));
    }
    return date;
  }

  private static boolean isDate(String typed) {
    try {
      return typed.contains("T")
          ? LocalDateTime.parse(typed) != null
          : LocalDate.parse(typed) != null;
    } catch (DateTimeException notOne) {
      return false;
    }
  }
}
