package rundlauf.simulated;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rundlauf.maths.Stream;
import rundlauf.quantity.Unit;

/** The demo bench's speed trials; Shrike is on hold and was never powered. */
final class DemoSpeeds {
  private static final double RPM = 1.0 / 60;
  private static final Tachometer TACHOMETER = new Tachometer(10 * RPM, 0.003, 0);

  private DemoSpeeds() {}

  static List<DemoTrial> all(long seed) {
    return List.of(heron(seed), wren(seed), dunlin(seed));
  }

  private static DemoTrial heron(long seed) {
    Drive drive = Drive.straight(100, 5900 * RPM, 400, 23700 * RPM).drawing(190);
    var settings = List.of(50.0, 90.0, 110.0, 150.0, 200.0, 250.0, 300.0, 350.0, 400.0);
    var taken =
        TakenSpeed.take(Stream.of(seed, "heron-speed"), drive, TACHOMETER, upAndDown(settings));
    var text =
        head(
            "Heron: speed against the drive's frequency in hertz",
            "2026-03-09",
            "Heron 3 mm",
            "Stroboscope card on the nut; the drive will not start below 100 Hz. Guard down, eye protection on.");
    return finished(
        "heron-speed",
        text,
        "[8000 rpm, 18000 rpm]",
        LoadText.speeds(taken, "setting", "10"),
        List.of(
            DemoTrial.Truth.rpm("usable.max", drive.top()),
            DemoTrial.Truth.setting("settingFor[0].setting", setting(drive, 8000 * RPM), Unit.ONE),
            DemoTrial.Truth.setting("settingFor[1].setting", setting(drive, 18000 * RPM), Unit.ONE),
            DemoTrial.Truth.setting("deadBelow", drive.deadBelow(), Unit.ONE)));
  }

  private static DemoTrial wren(long seed) {
    Drive drive = Drive.straight(22, 2600 * RPM, 86, 13900 * RPM).bowed(0.05);
    var settings = List.of(10.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 95.0, 100.0);
    var taken =
        TakenSpeed.take(Stream.of(seed, "wren-speed"), drive, TACHOMETER, upAndDown(settings));
    var text =
        head(
            "Wren: speed against the controller's duty",
            "2026-03-12",
            "Wren 3 mm",
            "Stands still and hums up to a fifth of the range; nothing more to be had over nine tenths.");
    return finished(
        "wren-speed",
        text,
        "[6000 rpm, 10000 rpm]",
        LoadText.speeds(taken, "setting_%", "10"),
        List.of(
            DemoTrial.Truth.rpm("usable.max", drive.top()),
            DemoTrial.Truth.setting(
                "settingFor[0].setting", setting(drive, 6000 * RPM), Unit.PERCENT),
            DemoTrial.Truth.setting(
                "settingFor[1].setting", setting(drive, 10000 * RPM), Unit.PERCENT),
            DemoTrial.Truth.setting("deadBelow", drive.deadBelow(), Unit.PERCENT),
            DemoTrial.Truth.setting("saturatesAbove", drive.saturatesAbove(), Unit.PERCENT)));
  }

  private static DemoTrial dunlin(long seed) {
    Drive drive = Drive.straight(7, 900 * RPM, 48, 11200 * RPM).bowed(0.02).drawing(70);
    var settings = List.of(4.0, 6.0, 8.0, 12.0, 18.0, 24.0, 30.0, 36.0, 42.0, 48.0);
    var taken =
        TakenSpeed.take(Stream.of(seed, "dunlin-speed"), drive, TACHOMETER, upAndDown(settings));
    var text =
        head(
            "Dunlin: speed against the supply's voltage",
            "2026-03-16",
            "Dunlin 1/8 in",
            "Brushes spark a little above 40 V.");
    return finished(
        "dunlin-speed",
        text,
        "[5000 rpm]",
        LoadText.speeds(taken, "setting_V", "10"),
        List.of(
            DemoTrial.Truth.rpm("usable.max", drive.top()),
            DemoTrial.Truth.setting("settingFor[0].setting", setting(drive, 5000 * RPM), Unit.VOLT),
            DemoTrial.Truth.setting("deadBelow", drive.deadBelow(), Unit.VOLT)));
  }

  /** The setting that truly gives {@code speed}, by halving. */
  private static double setting(Drive drive, double speed) {
    double low = drive.deadBelow();
    double high = drive.saturatesAbove();
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      low = drive.speed(middle) < speed ? middle : low;
      high = drive.speed(middle) < speed ? high : middle;
    }
    return (low + high) / 2;
  }

  /** Every setting on the way up, and once more on the way down. */
  private static List<Double> upAndDown(List<Double> settings) {
    List<Double> all = new ArrayList<>(settings);
    List<Double> down = new ArrayList<>(settings);
    Collections.reverse(down);
    all.addAll(down);
    return all;
  }

  private static TrialText head(String title, String date, String setup, String... notes) {
    return TrialText.of("speed", title, date, setup, notes);
  }

  private static DemoTrial finished(
      String name,
      TrialText text,
      String wanted,
      List<List<String>> table,
      List<DemoTrial.Truth> truths) {
    text.field("conditions", "{warm-up: 15 min, temperature: 19 degC}");
    text.field("wanted", wanted);
    text.readings(table);
    return new DemoTrial(name + ".yaml", text.text(), truths);
  }
}
