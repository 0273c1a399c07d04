package rundlauf.guide;

import java.util.ArrayList;
import java.util.List;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;

/** Conditions that a trial does not say yet, those first that spoil a comparison most. */
final class Unsaid {
  private static final List<String> TURNED =
      List.of("cleaned", "nut", "pin", "warm-up", "turned-by");
  private static final List<String> PUSHED =
      List.of("reference", "cleaned", "nut", "warm-up", "rotor");

  private Unsaid() {}

  static List<Saying> of(Trial trial) {
    List<String> wanted =
        switch (TrialKind.of(trial)) {
          case RUNOUT -> TURNED;
          case SIDE_LOAD, AXIAL -> PUSHED;
          case GROWTH -> List.of("reference", "warm-up", "temperature");
          case SPEED -> List.of("warm-up");
          case INSPECTION -> List.of();
        };
    List<Saying> unsaid = new ArrayList<>();
    for (String field : wanted) {
      if (!said(trial, field)) {
        unsaid.add(Saying.of("guide-unsaid-" + field, field));
      }
    }
    return unsaid;
  }

  private static boolean said(Trial trial, String field) {
    boolean within =
        trial.document().get("conditions").orElse(null) instanceof Entry.Fields conditions
            && conditions.get(field).isPresent();
    return within || trial.document().get(field).isPresent();
  }
}
