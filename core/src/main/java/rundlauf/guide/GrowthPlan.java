package rundlauf.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.Intended;

/** A growth trial: a reading every few minutes while the spindle warms. */
final class GrowthPlan {
  /** Our choice: most small spindles have settled by then (common practice, no source). */
  private static final double SPAN = 40 * 60;

  private static final double EVERY = 2 * 60;

  /** Readings at most, however finely they are meant. */
  private static final int MOST = 400;

  /** Readings at least: fewer times tell no curve, and the reader refuses them. */
  private static final int FEWEST = 4;

  private GrowthPlan() {}

  static Plan of(Intended intended, TypedRows typed) {
    Asked reading = Readings.asked(intended, typed);
    List<Asked> asked =
        List.of(reading, new Asked("temperature_degC", Asked.Kind.NUMBER, List.of(), false));
    double every = intended.every().map(Quantity::si).orElse(EVERY);
    double span = intended.span().map(Quantity::si).orElse(SPAN);
    String column = typed.column("time").orElse("time_min");
    Unit unit = Unit.ofSymbol(column.substring(column.indexOf('_') + 1)).orElse(Unit.MINUTE);
    double last = typed.last().map(row -> last(row, column, unit)).orElse(-every);
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < MOST && (steps.size() < FEWEST || i * every <= span * (1 + 1e-9)); i++) {
      Step step = step(column, unit, i * every, asked);
      if (i * every > last || answered(step, typed)) {
        steps.add(step);
      }
    }
    return new Plan(steps, step(column, unit, last + every, asked));
  }

  /** What has gone by without a reading, or with one that was struck, does not come again. */
  private static boolean answered(Step step, TypedRows typed) {
    return typed.rows().stream().anyMatch(row -> Plan.answers(step, row));
  }

  private static double last(Map<String, String> row, String column, Unit unit) {
    return TypedRows.number(row.getOrDefault(column, "0"))
        .map(n -> unit.toSi(n.doubleValue()))
        .orElse(0.0);
  }

  private static Step step(String column, Unit unit, double time, List<Asked> asked) {
    Saying prompt =
        time == 0
            ? Saying.of("guide-growth-begin", "")
            : Saying.of("guide-growth-at", "", Arg.of(time, Unit.MINUTE));
    List<Given> given = List.of(new Given(column, Format.number(unit.fromSi(time))));
    return new Step(prompt, given, asked, new Scene.Growth());
  }
}
