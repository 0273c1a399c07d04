package rundlauf.reduce.speed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.SpeedReadings;

/** Speed readings in, the speed curve, its inverse and its ends out. */
public final class SpeedReduction {
  private SpeedReduction() {}

  /**
   * The speed that each setting gives, and the setting that gives a speed.
   *
   * @param readings settings in their unit, speeds in turns per second, 0 where it did not turn;
   *     powers in watts
   * @param draws for the inverse of the curve
   * @return curve, usable range and droop with standard uncertainties from the scatter of repeats
   *     (pooled, Student's t) and from the rounding the digits show (rectangular); settings by
   *     draws; dead band and saturation as the interval between two settings
   * @throws Refused {@code speed-never-turned} when no reading is over 0
   * @see "docs/methods/speed.md"
   */
  public static Speed reduce(SpeedReadings readings, Draws draws) {
    if (readings.points().stream().noneMatch(p -> p.speed() > 0)) {
      Place file = new Place(readings.head().file(), 0, 0, "readings");
      throw Refused.at(file, "speed-never-turned", Arg.of(readings.points().size()));
    }
    SpeedLevels found = SpeedLevels.of(readings);
    Unit unit = unit(readings.settingUnit());
    SpeedCurve curve = SpeedCurve.of(found.levels());
    String file = readings.head().name();
    return new Speed(
        readings.head(),
        readings,
        curve.points(),
        slowest(found),
        fastest(found),
        settings(readings, curve, unit, draws),
        droop(found),
        SpeedEnds.deadBelow(readings, unit, draws),
        SpeedEnds.saturatesAbove(curve, file, unit, draws),
        SpeedEnds.falls(curve, unit),
        advice(found));
  }

  private static Unit unit(String settingUnit) {
    return settingUnit.isEmpty() ? Unit.ONE : Unit.ofSymbol(settingUnit).orElseThrow();
  }

  private static Measured slowest(SpeedLevels found) {
    return found.levels().stream()
        .map(SpeedLevels.Level::speed)
        .min(Comparator.comparingDouble(Measured::value))
        .orElseThrow();
  }

  private static Measured fastest(SpeedLevels found) {
    return found.levels().stream()
        .map(SpeedLevels.Level::speed)
        .max(Comparator.comparingDouble(Measured::value))
        .orElseThrow();
  }

  private static List<Speed.SettingFor> settings(
      SpeedReadings readings, SpeedCurve curve, Unit unit, Draws draws) {
    List<Speed.SettingFor> all = new ArrayList<>();
    for (int i = 0; i < readings.wanted().size(); i++) {
      double speed = readings.wanted().get(i);
      String file = readings.head().name() + " wanted " + (i + 1);
      Figure setting =
          curve.levels().size() < 2
              ? new Missing(unit, Saying.of("speed-one-setting", "settingFor"))
              : curve.reaches(speed)
                  ? curve.settingFor(speed, file, unit, draws)
                  : outside(curve, speed, unit);
      all.add(new Speed.SettingFor(speed, setting));
    }
    return all;
  }

  private static Missing outside(SpeedCurve curve, double speed, Unit unit) {
    return new Missing(
        unit,
        Saying.of(
            "speed-outside-curve",
            "settingFor",
            Arg.of(speed, Unit.RPM),
            Arg.of(curve.lowest(), Unit.RPM),
            Arg.of(curve.highest(), Unit.RPM)));
  }

  private static Figure droop(SpeedLevels found) {
    return found
        .droop()
        .map(Figure.class::cast)
        .orElseGet(() -> new Missing(Unit.RPM_PER_WATT, Saying.of("speed-no-load-step", "droop")));
  }

  private static List<Saying> advice(SpeedLevels found) {
    List<Saying> advice = new ArrayList<>();
    if (found.scatter().isEmpty()) {
      advice.add(
          found.step().isPresent()
              ? Saying.of(
                  "speed-doubt-is-rounding", "curve", Arg.of(found.step().getAsDouble(), Unit.RPM))
              : Saying.of("speed-doubt-unknown", "curve"));
    }
    if (found.levels().size() == 2) {
      advice.add(Saying.of("speed-two-settings", "settingFor"));
    }
    return advice;
  }
}
