package rundlauf.files;

import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.readings.AxialReader;
import rundlauf.readings.GrowthReader;
import rundlauf.readings.InspectionReader;
import rundlauf.readings.LoadReader;
import rundlauf.readings.RunoutReader;
import rundlauf.readings.SpeedReader;
import rundlauf.readings.TrialKind;

/** Readings of a trial of whatever kind. */
final class Understanding {
  private Understanding() {}

  static Record of(Trial trial, Optional<Bench> bench) {
    return switch (TrialKind.of(trial)) {
      case RUNOUT -> RunoutReader.read(trial, bench);
      case SIDE_LOAD -> LoadReader.read(trial, bench);
      case AXIAL -> AxialReader.read(trial, bench);
      case GROWTH -> GrowthReader.read(trial, bench);
      case SPEED -> SpeedReader.read(trial, bench);
      case INSPECTION -> InspectionReader.read(trial, bench);
    };
  }
}
