package rundlauf.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.InspectionReadings;
import rundlauf.safety.SafetyItem;

/** An inspection: every item of the safety list. */
final class InspectionPlan {
  private InspectionPlan() {}

  static Plan of() {
    Asked state = new Asked("state", Asked.Kind.CHOICE, InspectionReadings.State.words(), true);
    List<Asked> asked = List.of(state, text("value"), text("note"));
    List<Step> steps = new ArrayList<>();
    for (SafetyItem item : SafetyItem.of(SafetyItem.Fed.UNKNOWN)) {
      String code = "guide-inspect-" + item.when().name().toLowerCase(Locale.ROOT);
      Saying prompt = Saying.of(code, "", Arg.term(item.id()));
      List<Given> given = List.of(new Given("item", item.id()));
      steps.add(new Step(prompt, given, asked, new Scene.Inspection(item.id())));
    }
    List<Asked> all = new ArrayList<>(List.of(text("item")));
    all.addAll(asked);
    Saying other = Saying.of("guide-inspect-other", "");
    return new Plan(steps, new Step(other, List.of(), all, new Scene.Inspection("")));
  }

  private static Asked text(String column) {
    return new Asked(column, Asked.Kind.TEXT, List.of(), column.equals("item"));
  }
}
