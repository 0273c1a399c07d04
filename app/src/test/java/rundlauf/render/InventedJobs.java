package rundlauf.render;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Cut;
import rundlauf.bench.Entry;
import rundlauf.bench.Job;
import rundlauf.character.EnteredCharacter;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Materials;
import rundlauf.cutting.Operation;
import rundlauf.cutting.prediction.Allowed;
import rundlauf.cutting.prediction.CutAsked;
import rundlauf.cutting.prediction.CutTask;
import rundlauf.cutting.prediction.Predicting;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.maths.Draws;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.JobPlan;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.safety.Standing;

/** Jobs planned by hand on the invented bench. */
final class InventedJobs {
  private static final Draws DRAWS = new Draws(1, 200);

  private InventedJobs() {}

  static List<JobOutcome> outcomes() {
    List<SetupPlan> setups =
        List.of(
            plan("Heron, collet, 1 mm pearl cutter", 0.2, true, Standing.INSPECTED),
            plan("Dunlin, bare", 2.5, false, Standing.NOT_INSPECTED),
            held("Wren, chuck, fret saw"));
    Saying chatter = Saying.of("chatter-not-examined", "");
    JobPlan plan =
        new JobPlan(
            job("Bridge slot " + InventedBench.HOSTILE), setups, List.of(chatter), List.of());
    Refused refused =
        Refused.at(new Place("bench.yaml", 9, 0, "jobs"), "field-missing", Arg.of("depth"));
    return List.of(
        new JobOutcome.Planned(plan), new JobOutcome.Unplannable(job("Pin hole"), refused));
  }

  private static Job job(String name) {
    Optional<Quantity> none = Optional.empty();
    return new Job(
        name,
        Optional.empty(),
        List.of(),
        Optional.of("slot"),
        Optional.of(mm(0.4)),
        Optional.of(mm(3)),
        none,
        Optional.of(mm(0.1)),
        none,
        none,
        Optional.empty(),
        Optional.empty(),
        new Entry.Fields(Map.of(), Map.of(), Place.NOWHERE));
  }

  private static SetupPlan plan(String setup, double depth, boolean feasible, Standing standing) {
    Prediction best = predicted(depth);
    return new SetupPlan(
        setup,
        Optional.of("3 mm two-flute"),
        Optional.of(best.task().setup()),
        Optional.of(best),
        feasible,
        Optional.of(95.0),
        Optional.of(new SetupPlan.Passes(2, 1)),
        Optional.of(best.limits().get(best.limits().size() - 1)),
        standing,
        List.of(),
        List.of());
  }

  private static SetupPlan held(String setup) {
    return new SetupPlan(
        setup,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Standing.HELD,
        List.of(),
        List.of());
  }

  static Prediction predicted(double depth) {
    CutterInUse cutter =
        new CutterInUse(
            "3 mm two-flute",
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
            new Cut.FeedPerTooth(Quantity.exact(9e-6, Unit.MICROMETRE)),
            mm(depth),
            mm(3));
    OptionalDouble none = OptionalDouble.empty();
    Allowed allowed = new Allowed(OptionalDouble.of(50e-6), none, none, none, none, none);
    return Predicting.predict(
        new CutTask(
            cutter, cut, Materials.named("aluminium 6082-T6").orElseThrow(), setup(), allowed),
        DRAWS,
        Predicting.STATES);
  }

  private static SetupCharacter setup() {
    Optional<Quantity> stiffness =
        Optional.of(new Quantity(0.8e6, 0.1e6, Unit.NEWTON_PER_MICROMETRE));
    Optional<Quantity> none = Optional.empty();
    return EnteredCharacter.of(
        new Cut.SetupGiven(
            Optional.of(new Quantity(6e-6, 2e-6, Unit.MICROMETRE)),
            none,
            none,
            none,
            stiffness,
            stiffness,
            none,
            Optional.of(Quantity.exact(400, Unit.RPM)),
            Optional.of(Quantity.exact(400, Unit.WATT)),
            none,
            List.of()),
        "invented",
        DRAWS);
  }

  private static Quantity mm(double length) {
    return Quantity.exact(length * 1e-3, Unit.MILLIMETRE);
  }
}
