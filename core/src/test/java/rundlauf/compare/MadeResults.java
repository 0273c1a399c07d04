package rundlauf.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.runout.Runout;

/** Runout results of figures given, not reduced. */
final class MadeResults {
  static final Cause DIAL = Cause.rectangular("indicator/dial", "limit-of-error");

  private MadeResults() {}

  static TrialHead head(String file, String date, Map<String, String> conditions) {
    return new TrialHead(
        file, "runout", Optional.empty(), Optional.of(date), Optional.empty(), conditions);
  }

  /** A swing [m] read with the one dial. */
  static Measured tir(String file, double value, double scatter, double dial) {
    return Measured.exact(value, Unit.MICROMETRE)
        .with(Cause.normal(file, "scatter"), scatter)
        .with(DIAL, dial);
  }

  /** A result whose tip is at 20 mm and whose only station is at 5 mm. */
  static Runout runout(TrialHead head, Figure tipTir, Figure stationTir) {
    return runout(head, 0.020, tipTir, stationTir);
  }

  static Runout runout(TrialHead head, double tipHeight, Figure tipTir, Figure stationTir) {
    Figure none = missing();
    RunoutReadings.Sweep sweep =
        new RunoutReadings.Sweep(
            OptionalDouble.of(0.005),
            1,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Samples.of(),
            Samples.of(),
            OptionalDouble.empty(),
            1);
    Runout.Station station =
        new Runout.Station(
            sweep,
            none,
            stationTir,
            none,
            none,
            List.of(),
            none,
            Samples.of(),
            List.of(),
            Optional.empty());
    Runout.Tip tip = new Runout.Tip(OptionalDouble.of(tipHeight), tipTir, none, none);
    return new Runout(
        head,
        List.of(station),
        new Runout.Axis(none, none, tip),
        none,
        new Runout.NextClamping(OptionalDouble.empty(), none, none),
        List.of(),
        List.of());
  }

  static Missing missing() {
    return new Missing(Unit.MICROMETRE, Saying.of("made-missing", ""));
  }
}
