package rundlauf.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Cutter;
import rundlauf.bench.Setup;
import rundlauf.cutting.CutterInUse;
import rundlauf.planning.Knowledge.Put;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.safety.SetupCautions;

/** Which cutters can be tried on a setup, and why the others cannot. */
final class Fitting {
  /** Codes of the cautions of a shank that the holder does not close on. */
  private static final List<String> LOOSE = List.of("shank-too-thick", "shank-too-thin");

  private final JobTask task;
  private final Bench bench;
  private final Setup setup;
  private final List<Candidate> candidates = new ArrayList<>();
  private final List<Saying> reasons = new ArrayList<>();

  private Fitting(JobTask task, Bench bench, Setup setup) {
    this.task = task;
    this.bench = bench;
    this.setup = setup;
  }

  /**
   * A cutter to be tried.
   *
   * @param inUse as it is predicted
   * @param said what is taken for granted with it
   */
  record Candidate(Put put, CutterInUse inUse, List<Saying> said) {}

  static Fitting of(JobTask task, Bench bench, Setup setup) {
    Fitting fitting = new Fitting(task, bench, setup);
    List<Cutter> cutters = fitting.cutters();
    if (cutters.isEmpty()) {
      fitting.reasons.add(Saying.of("setup-without-cutter", "cutter", Arg.of(setup.name())));
    }
    cutters.forEach(fitting::fit);
    return fitting;
  }

  List<Candidate> candidates() {
    return candidates;
  }

  /** Why each of the others cannot be tried. */
  List<Saying> reasons() {
    return reasons;
  }

  /** The job's, or else the setup's own. */
  private List<Cutter> cutters() {
    return task.job().cutters().isEmpty()
        ? setup.cutter().flatMap(bench::cutter).stream().toList()
        : task.job().cutters().stream().flatMap(name -> bench.cutter(name).stream()).toList();
  }

  private void fit(Cutter cutter) {
    Optional<Saying> why =
        CutterChecks.unfit(task, cutter).map(CutterChecks.Unfit::why).or(() -> loose(cutter));
    Optional<Quantity> stickout =
        cutter.stickout().isPresent() ? cutter.stickout() : setup.stickout();
    if (why.isEmpty() && stickout.isEmpty()) {
      why = Optional.of(Saying.of("stickout-not-given", "cutter", Arg.of(setup.name())));
    }
    if (why.isPresent()) {
      reasons.add(why.get());
      return;
    }
    try {
      candidates.add(candidate(new Put(setup, cutter, stickout.orElseThrow())));
    } catch (Refused unknown) {
      reasons.add(unknown.saying());
    }
  }

  private Optional<Saying> loose(Cutter cutter) {
    OptionalDouble none = OptionalDouble.empty();
    return SetupCautions.of(bench, with(cutter), none, none).stream()
        .filter(saying -> LOOSE.contains(saying.code()))
        .findFirst();
  }

  private Setup with(Cutter cutter) {
    return new Setup(
        setup.name(),
        setup.spindle(),
        setup.holder(),
        Optional.of(cutter.name()),
        setup.stickout(),
        setup.notes());
  }

  private Candidate candidate(Put put) {
    List<Saying> said = new ArrayList<>();
    Cutter cutter = put.cutter();
    boolean own = setup.cutter().equals(Optional.of(cutter.name()));
    if (!own && cutter.stickout().isEmpty()) {
      Quantity stickout = put.stickout();
      said.add(
          Saying.of(
              "stickout-taken-over",
              "cutter",
              Arg.of(cutter.name()),
              Arg.of(stickout.si(), stickout.unit()),
              Arg.of(setup.name())));
    }
    CutterInUse inUse = CutterInUse.of(cutter, Optional.of(put.stickout()), Place.NOWHERE);
    if (task.feature() == Feature.ENGRAVE) {
      inUse = Groove.asEndMill(inUse, cutter, task.depth());
      said.add(Saying.of("v-tool-approximated", "cutter", Arg.of(cutter.name())));
    }
    return new Candidate(put, inUse, said);
  }
}
