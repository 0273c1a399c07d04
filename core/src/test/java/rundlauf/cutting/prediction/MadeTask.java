package rundlauf.cutting.prediction;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Cut;
import rundlauf.character.SetupCharacter;
import rundlauf.character.SetupCharacter.TiltOf;
import rundlauf.character.Trait;
import rundlauf.cutting.CoefficientDoubt;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Operation;
import rundlauf.cutting.SmallestChip;
import rundlauf.cutting.Status;
import rundlauf.cutting.WorkMaterial;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** Cuts made by hand for the tests; every part can be changed. */
final class MadeTask {
  static final Draws DRAWS = new Draws(7, 400);

  CutterInUse cutter =
      new CutterInUse(
          "",
          Optional.of("end-mill"),
          mm(3),
          2,
          Quantity.exact(Math.toRadians(30), Unit.DEGREE),
          mm(9),
          mm(20),
          mm(3),
          Quantity.exact(580e9, Unit.GIGAPASCAL),
          Optional.of(Quantity.exact(1500e6, Unit.MEGAPASCAL)),
          Optional.of(Quantity.exact(3e-6, Unit.MICROMETRE)),
          Optional.empty());
  CutAsked cut =
      new CutAsked(
          Operation.SLOT,
          Quantity.exact(300, Unit.RPM),
          new Cut.FeedPerTooth(Quantity.exact(15e-6, Unit.MICROMETRE)),
          mm(0.5),
          mm(3));
  Coefficients coefficients = new Coefficients.LinearEdge(800e6, 200e6, 100e6, 10e3, 12e3, 1e3);
  double spread = 0;
  Trait eccentricity = Trait.entered(Measured.exact(12e-6, Unit.MICROMETRE));
  Trait firstTooth = Trait.entered(Measured.exact(Math.toRadians(30), Unit.DEGREE));
  Trait tilt = Trait.entered(Measured.exact(0.2e-3, Unit.MICROMETRE_PER_MILLIMETRE));
  Trait tiltAngle = Trait.entered(Measured.exact(0, Unit.DEGREE));
  Trait stiffness = Trait.entered(Measured.exact(0.8e6, Unit.NEWTON_PER_MICROMETRE));
  Trait power = Trait.entered(Measured.exact(400, Unit.WATT));
  Allowed allowed = Allowed.ANYTHING;

  static Quantity mm(double length) {
    return Quantity.exact(length * 1e-3, Unit.MILLIMETRE);
  }

  /** Tooth 1 anywhere in the turn. */
  static Trait anywhere(Draws draws) {
    Cause place = Cause.rectangular("setup/", "first-tooth");
    double half = Math.PI / Math.sqrt(3);
    Samples all = place.draws(draws).map(z -> Math.PI + half * z);
    return Trait.assumed(
        Drawn.of(Unit.DEGREE, all, Map.of(place, half)), Saying.of("made-anywhere", ""));
  }

  SetupCharacter setup() {
    return new SetupCharacter(
        "",
        eccentricity,
        firstTooth,
        tilt,
        tiltAngle,
        TiltOf.FIRST_TOOTH,
        stiffness,
        stiffness,
        Trait.entered(Measured.exact(8000 / 60.0, Unit.RPM)),
        Trait.entered(Measured.exact(24000 / 60.0, Unit.RPM)),
        Trait.missing(Unit.RPM_PER_WATT, Saying.of("made-missing", "")),
        power,
        Trait.entered(Measured.exact(24000 / 60.0, Unit.RPM)),
        Optional.empty(),
        List.of(),
        List.of());
  }

  WorkMaterial material() {
    return new WorkMaterial(
        "made",
        coefficients,
        CoefficientDoubt.common(spread),
        Status.ENTERED,
        "source-typed",
        Optional.empty(),
        Optional.empty(),
        SmallestChip.USUAL,
        List.of());
  }

  CutTask task() {
    return new CutTask(cutter, cut, material(), setup(), allowed);
  }

  Prediction predicted() {
    return Predicting.predict(task(), DRAWS, Predicting.STATES);
  }
}
