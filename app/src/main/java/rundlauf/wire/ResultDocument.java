package rundlauf.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
import rundlauf.reduce.growth.Growth;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.safety.Inspection;

/** The JSON document of one reduced trial: head, figures, budget, cautions, advice. */
public final class ResultDocument {
  private ResultDocument() {}

  /**
   * The document on one line, without a line end.
   *
   * @param wording the sentence of a saying; the name of a cause is asked for as {@code term.PART}
   */
  public static String of(Reduced result, Function<Saying, String> wording) {
    return JsonLine.of(
        wording,
        json -> {
          head(json, result.head());
          List<Saying> notYet = body(json, result);
          budget(json, result.figures());
          json.sayings("cautions", result.cautions());
          List<Saying> advice = new ArrayList<>(result.advice());
          advice.addAll(notYet);
          json.sayings("advice", advice);
        });
  }

  private static void head(JsonLine json, TrialHead head) {
    json.text("file", head.file());
    json.text("trial", head.kind());
    json.text("title", head.title());
    json.text("date", head.date());
    json.text("setup", head.setup());
  }

  /** Writes the figures; gives a saying for every list that this version leaves empty. */
  private static List<Saying> body(JsonLine json, Reduced result) {
    if (result instanceof Runout runout) {
      return RunoutFigures.write(json, runout);
    }
    if (result instanceof SideLoad sideLoad) {
      return SideLoadFigures.write(json, sideLoad);
    }
    if (result instanceof Axial axial) {
      return AxialFigures.write(json, axial);
    }
    if (result instanceof Growth growth) {
      return GrowthFigures.write(json, growth);
    }
    if (result instanceof Speed speed) {
      return SpeedFigures.write(json, speed);
    }
    if (result instanceof Inspection inspection) {
      return InspectionFigures.write(json, inspection);
    }
    throw new IllegalArgumentException("no JSON document for " + result.getClass().getName());
  }

  private static void budget(JsonLine json, Map<String, Figure> figures) {
    json.list("budget", BudgetLine.of(figures), line -> line.write(json));
  }
}
