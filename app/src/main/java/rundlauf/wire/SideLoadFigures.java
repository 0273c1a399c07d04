package rundlauf.wire;

import java.util.List;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.sideload.SideLoad;

/** The figures of a side-load trial. */
final class SideLoadFigures {
  private SideLoadFigures() {}

  static List<Saying> write(JsonLine json, SideLoad load) {
    json.figure("stiffness", load.stiffness());
    json.figure("compliance", load.compliance());
    json.figure("play", load.play());
    json.figure("hysteresis", load.hysteresis());
    straightness(json, load);
    json.object("shank", () -> json.figure("compliance", load.shankCompliance()));
    json.figure("setupStiffness", load.setupStiffness());
    json.object(
        "directions",
        () -> {
          json.object("soft", () -> direction(json));
          json.object("stiff", () -> direction(json));
        });
    json.list("shares", List.of(), share -> {});
    json.list("reach", List.of(), reach -> {});
    return List.of(
        Saying.of("shares-not-reduced", "shares"), Saying.of("reach-not-reduced", "reach"));
  }

  private static void straightness(JsonLine json, SideLoad load) {
    var test = load.straightness();
    if (test.isPresent()) {
      json.object(
          "straightness",
          () -> {
            json.number("f", test.get().f());
            json.number("p", test.get().p());
          });
    } else {
      var why = Saying.of("straightness-not-tested", "straightness");
      json.figure("straightness", new Missing(Unit.ONE, why));
    }
  }

  private static void direction(JsonLine json) {
    var why = Saying.of("directions-not-reduced", "directions");
    json.figure("angle", new Missing(Unit.DEGREE, why));
    json.figure("stiffness", new Missing(Unit.NEWTON_PER_MICROMETRE, why));
  }
}
