package rundlauf.safety;

import java.util.List;
import java.util.Locale;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** Whether a spindle may be powered, as far as its inspections tell. */
public enum Standing {
  /** Its last inspection holds it: do not power. */
  HELD,
  /** It has not been inspected: nobody knows. */
  NOT_INSPECTED,
  /** Its last inspection found nothing against it. */
  INSPECTED;

  /** By the last inspection, taken on any setup of the spindle. */
  public static Standing of(List<Inspection> inspections) {
    if (inspections.isEmpty()) {
      return NOT_INSPECTED;
    }
    return last(inspections).hold() ? HELD : INSPECTED;
  }

  /**
   * The inspection that counts: the one of the latest date; of equal or missing dates the one
   * further back in the list.
   */
  public static Inspection last(List<Inspection> inspections) {
    Inspection last = inspections.get(0);
    for (Inspection one : inspections) {
      // Dates are written year first, so that their texts sort as they do.
      if (date(one).compareTo(date(last)) >= 0) {
        last = one;
      }
    }
    return last;
  }

  /** What is said wherever the spindle is named; nothing where it was found good. */
  public List<Saying> cautions(String spindle) {
    return switch (this) {
      case HELD -> List.of(Saying.of("spindle-held", spindle, Arg.of(spindle)));
      case NOT_INSPECTED -> List.of(Saying.of("spindle-not-inspected", spindle, Arg.of(spindle)));
      case INSPECTED -> List.of();
    };
  }

  private static String date(Inspection inspection) {
    return inspection.head().date().orElse("");
  }

  /** As written in files: {@code held}, {@code not-inspected}, {@code inspected}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
