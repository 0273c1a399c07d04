package rundlauf.guide;

import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.Intended;

/** A speed trial: setting by setting, from the lowest up. */
final class SpeedPlan {
  /** Our choice, because fewer do not tell where the curve bends. */
  private static final int SETTINGS = 6;

  private SpeedPlan() {}

  static Plan of(Intended intended, TypedRows typed) {
    Asked speed = number("speed_rpm", true);
    Asked power = number("power_W", false);
    String column = typed.column("setting").orElse(column(intended.settings()));
    List<Step> steps = new ArrayList<>();
    for (String setting : intended.settings()) {
      Saying prompt = Saying.of("guide-speed-set", "", Arg.typed(setting));
      List<Given> given = List.of(new Given(column, value(setting)));
      steps.add(new Step(prompt, given, List.of(speed, power), new Scene.Speed()));
    }
    List<Asked> all = List.of(number(column, true), speed, power);
    Step free = new Step(Saying.of("guide-speed-any", ""), List.of(), all, new Scene.Speed());
    while (intended.settings().isEmpty() && steps.size() < SETTINGS) {
      steps.add(free);
    }
    return new Plan(steps, free);
  }

  private static Asked number(String column, boolean needed) {
    return new Asked(column, Asked.Kind.NUMBER, List.of(), needed);
  }

  /** By the unit of the first setting: {@code 20 %}, {@code 5 V}, or a bare number. */
  private static String column(List<String> settings) {
    String first = settings.isEmpty() ? "" : settings.get(0).strip();
    return first.endsWith("%") ? "setting_%" : first.endsWith("V") ? "setting_V" : "setting";
  }

  private static String value(String setting) {
    return setting.strip().replaceAll("\\s*[%V]$", "");
  }
}
