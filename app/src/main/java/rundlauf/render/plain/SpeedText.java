package rundlauf.render.plain;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Unit;
import rundlauf.reduce.speed.Speed;

/** The figures of a speed trial as text. */
final class SpeedText {
  private SpeedText() {}

  static void write(Sheet sheet, Speed speed) {
    Map<String, Figure> usable = new LinkedHashMap<>();
    usable.put("label-speed-min", speed.usableMin());
    usable.put("label-speed-max", speed.usableMax());
    usable.put("label-dead-below", speed.deadBelow());
    usable.put("label-saturates-above", speed.saturatesAbove());
    usable.put("label-droop", speed.droop());
    sheet.group("heading-usable", List.of(), usable);
    if (!speed.settingFor().isEmpty()) {
      sheet.heading("heading-setting-for");
      for (Speed.SettingFor wanted : speed.settingFor()) {
        String label = sheet.word("label-setting-for", Arg.of(wanted.speed(), Unit.RPM));
        sheet.figure(label, wanted.setting());
      }
    }
    curve(sheet, speed);
    Blame.write(sheet, sheet.word("label-speed-max"), speed.usableMax(), speed.head().name());
  }

  private static void curve(Sheet sheet, Speed speed) {
    sheet.heading("heading-curve");
    String unit = speed.readings().settingUnit();
    for (Speed.CurvePoint point : speed.curve()) {
      String label = sheet.word("label-setting", Arg.number(point.setting()), Arg.of(unit));
      sheet.figure(label, point.speed());
    }
  }
}
