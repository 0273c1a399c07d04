package rundlauf.reduce.speed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;

/**
 * What a speed trial gives. Speeds in turns per second, settings in the trial's unit.
 *
 * @param curve the monotone curve through the settings measured
 * @param usableMin lowest steady speed measured
 * @param usableMax highest speed measured
 * @param settingFor the settings of the wanted speeds
 * @param droop turns per second lost per watt over idle
 * @param deadBelow setting under which it did not turn
 * @param saturatesAbove setting over which the speed no longer rises
 */
public record Speed(
    TrialHead head,
    SpeedReadings readings,
    List<CurvePoint> curve,
    Figure usableMin,
    Figure usableMax,
    List<SettingFor> settingFor,
    Figure droop,
    Figure deadBelow,
    Figure saturatesAbove,
    List<Saying> cautions,
    List<Saying> advice)
    implements Reduced {

  public Speed {
    curve = List.copyOf(curve);
    settingFor = List.copyOf(settingFor);
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  /** A point of the curve. */
  public record CurvePoint(double setting, Figure speed) {}

  /** The setting that gives {@code speed} (turns per second). */
  public record SettingFor(double speed, Figure setting) {}

  @Override
  public Map<String, Figure> figures() {
    Map<String, Figure> all = new LinkedHashMap<>();
    for (int i = 0; i < curve.size(); i++) {
      all.put("curve[" + i + "].speed", curve.get(i).speed());
    }
    all.put("usable.min", usableMin);
    all.put("usable.max", usableMax);
    for (int i = 0; i < settingFor.size(); i++) {
      all.put("settingFor[" + i + "].setting", settingFor.get(i).setting());
    }
    all.put("droop", droop);
    all.put("deadBelow", deadBelow);
    all.put("saturatesAbove", saturatesAbove);
    return all;
  }

  @Override
  public Speed withCautions(List<Saying> more) {
    return new Speed(
        head,
        readings,
        curve,
        usableMin,
        usableMax,
        settingFor,
        droop,
        deadBelow,
        saturatesAbove,
        Reduced.joined(more, cautions),
        advice);
  }
}
