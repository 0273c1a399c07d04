package rundlauf.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.push.Straightness;
import rundlauf.reduce.sideload.Compliances;
import rundlauf.reduce.sideload.Shares;
import rundlauf.reduce.sideload.SideLoad;

/** The figures of a side-load trial. */
final class SideLoadFigures {
  private SideLoadFigures() {}

  static List<Saying> write(JsonLine json, SideLoad load) {
    json.figure("stiffness", load.stiffness());
    json.figure("compliance", load.compliance());
    json.figure("play", load.play());
    json.figure("hysteresis", load.hysteresis());
    straightness(json, load.straightness());
    json.object("shank", () -> json.figure("compliance", load.shankCompliance()));
    json.figure("setupStiffness", load.setupStiffness());
    json.object(
        "directions",
        () -> {
          json.object("soft", () -> direction(json, load.compliances().soft()));
          json.object("stiff", () -> direction(json, load.compliances().stiff()));
        });
    json.list("shares", load.compliances().shares().entries(), share -> share(json, share));
    json.list(
        "reach",
        load.compliances().reach(),
        reach -> {
          json.number("at_mm", Unit.MILLIMETRE.fromSi(reach.at()));
          json.figure("stiffness", reach.stiffness());
        });
    List<Saying> said = new ArrayList<>(load.compliances().sayings());
    load.compliances().shares().sayings().stream()
        .filter(saying -> !load.advice().contains(saying))
        .forEach(said::add);
    return said;
  }

  /** The test of lack of fit, or why there is none. */
  static void straightness(JsonLine json, Optional<Straightness> test) {
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

  private static void share(JsonLine json, Shares.Share share) {
    json.text("joint", share.joint());
    json.figure("compliance", share.compliance());
    json.figure("share", share.share());
    json.text("bound", share.bound().map(SideLoadFigures::bound));
  }

  private static String bound(Shares.Bound bound) {
    return switch (bound) {
      case AT_LEAST -> "at least";
      case AT_MOST -> "at most";
    };
  }

  private static void direction(JsonLine json, Compliances.Axis axis) {
    json.figure("angle", axis.angle());
    json.figure("stiffness", axis.stiffness());
  }
}
