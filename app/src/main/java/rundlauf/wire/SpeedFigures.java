package rundlauf.wire;

import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.speed.Speed;

/** The figures of a speed trial. */
final class SpeedFigures {
  private SpeedFigures() {}

  static List<Saying> write(JsonLine json, Speed speed) {
    json.text("settingUnit", speed.readings().settingUnit());
    json.list(
        "curve",
        speed.curve(),
        point -> {
          json.number("setting", point.setting());
          json.figure("speed", point.speed());
        });
    json.object(
        "usable",
        () -> {
          json.figure("min", speed.usableMin());
          json.figure("max", speed.usableMax());
        });
    json.list(
        "settingFor",
        speed.settingFor(),
        wanted -> {
          json.number("rpm", Unit.RPM.fromSi(wanted.speed()));
          json.figure("setting", wanted.setting());
        });
    json.figure("droop", speed.droop());
    json.figure("deadBelow", speed.deadBelow());
    json.figure("saturatesAbove", speed.saturatesAbove());
    return List.of();
  }
}
