package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rundlauf.cutting.prediction.CutFigures.ToothFigures;
import rundlauf.cutting.surface.PullOut;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;

/** Predicts what a cut will do. */
public final class Predicting {
  /** Joint draws by default; our choice: a probability of 95 % is then told to about 3 %. */
  public static final int STATES = 64;

  private final CutTask task;
  private final HeldStates held;
  private final boolean feedback;
  private final Outcomes rigid;
  private final Outcomes outcomes;
  private final Optional<Saying> restless;
  private final Spread spread;
  private final Assumptions assumptions;

  private Predicting(CutTask task, Draws draws, int states) {
    this.task = task;
    this.held = HeldStates.of(task.cutter(), task.material(), task.setup(), draws, states);
    this.rigid = Outcomes.of(task.cut(), held, draws, false);
    this.feedback =
        CutReadings.bendingMissing(task).isEmpty() && Feedback.counts(rigid.fine().get(0).state());
    this.outcomes = feedback ? Outcomes.of(task.cut(), held, draws, true) : rigid;
    this.restless = feedback ? unsettled(outcomes.fine()) : Optional.empty();
    List<HeldStates.Input> inputs = new ArrayList<>(held.inputs());
    inputs.addAll(CutStates.inputs(task.cut(), draws, states));
    Cause place = Cause.rectangular("setup/" + task.setup().name(), "first-tooth");
    this.spread = new Spread(inputs, states, place, HeldStates.placeOpen(task.setup()));
    this.assumptions = new Assumptions(task.setup(), feedback);
  }

  /**
   * Every figure of a cut, and how it stands to its limits.
   *
   * @param task the cut
   * @param draws that the setup's figures were made with
   * @param states how many of them are looked at, at most {@code draws.count()}
   * @return values of the central state, where the place of tooth 1 is not known the middle of five
   *     places; intervals by equal tails of the draws, widened where they would not hold the value;
   *     probabilities as shares of the draws
   * @see "docs/methods/predict.md"
   */
  public static Prediction predict(CutTask task, Draws draws, int states) {
    return new Predicting(task, draws, states).predict();
  }

  private static Optional<Saying> unsettled(List<CutOutcome> outcomes) {
    return outcomes.stream().flatMap(o -> o.unsettled().stream()).findFirst();
  }

  private Prediction predict() {
    Map<String, List<Saying>> assumed = new LinkedHashMap<>();
    CutFigures figures = figures(CutReadings.of(task, restless), outcomes, assumed);
    Limits limits = Limits.of(LimitChecks.of(task, restless), outcomes, spread, assumptions);
    boolean runoutKnown = task.setup().eccentricity().known();
    return new Prediction(
        task,
        figures,
        feedback
            ? Optional.of(figures(CutReadings.rigid(task), rigid, new LinkedHashMap<>()))
            : Optional.empty(),
        runoutKnown ? Optional.of(outcomes.fine().get(0).turn()) : Optional.empty(),
        limits.limits(),
        limits.probability(),
        assumed,
        cautions(limits, runoutKnown),
        advice(figures));
  }

  private CutFigures figures(
      List<Reading> readings, Outcomes from, Map<String, List<Saying>> assumed) {
    List<ToothFigures> teeth = new ArrayList<>();
    for (int k = 1; k <= task.cutter().teeth(); k++) {
      teeth.add(new ToothFigures(k, tooth(k, 0, from, assumed), tooth(k, 1, from, assumed)));
    }
    Map<String, Figure> byPath = new LinkedHashMap<>();
    readings.forEach(r -> byPath.put(r.path(), figure(r, from, assumed)));
    return new CutFigures(teeth, byPath);
  }

  /**
   * A figure of one tooth. Where nobody knows how they stand, all teeth are alike, and the centre
   * is that of all of them at all places.
   */
  private Figure tooth(int k, int which, Outcomes from, Map<String, List<Saying>> assumed) {
    Reading own = CutReadings.tooth(task, k).get(which);
    if (!HeldStates.placeOpen(task.setup())) {
      return figure(own, List.of(own), from, assumed);
    }
    List<Reading> all = new ArrayList<>();
    for (int j = 1; j <= task.cutter().teeth(); j++) {
      all.add(CutReadings.tooth(task, j).get(which));
    }
    return figure(own, all, from, assumed);
  }

  private Figure figure(Reading reading, Outcomes from, Map<String, List<Saying>> assumed) {
    return figure(reading, List.of(reading), from, assumed);
  }

  private Figure figure(
      Reading reading, List<Reading> alike, Outcomes from, Map<String, List<Saying>> assumed) {
    if (reading.missing().isPresent()) {
      return new Missing(reading.unit(), reading.missing().get());
    }
    List<Saying> beneath = assumptions.beneath(reading.touched());
    if (!beneath.isEmpty()) {
      assumed.put(reading.path(), beneath);
    }
    return from.figure(
        reading.unit(), alike.stream().map(Reading::of).toList(), reading.of(), spread);
  }

  private List<Saying> cautions(Limits limits, boolean runoutKnown) {
    Set<Saying> cautions = new LinkedHashSet<>(task.setup().cautions());
    limits.limits().stream()
        .filter(limit -> limit.judged() && !limit.holds())
        .forEach(limit -> cautions.add(fails(limit)));
    restless.ifPresent(cautions::add);
    long without = outcomes.drawn().stream().filter(o -> o.unsettled().isPresent()).count();
    if (restless.isEmpty() && without > 0) {
      Arg all = Arg.of(outcomes.drawn().size());
      cautions.add(Saying.of("nose-unsettled-draws", "deflection", Arg.of(without), all));
    }
    if (runoutKnown && task.allowed().lift().isEmpty()) {
      PullOut.notJudged(outcomes.fine().get(0).turn()).ifPresent(cautions::add);
    }
    cautions.addAll(task.material().cautions());
    cautions.add(Saying.of("chatter-not-examined", "stability"));
    return List.copyOf(cautions);
  }

  private static Saying fails(Limit limit) {
    boolean likely = limit.margin().value() >= 0;
    String code = likely ? "limit-unsure" : "limit-fails";
    return Saying.of(
        limit.atLeast() ? code + "-least" : code,
        limit.code(),
        Arg.term("limit-" + limit.code()),
        Arg.about(limit.value().value(), limit.value().unit()),
        Arg.about(limit.allowed().value(), limit.allowed().unit()),
        Arg.of((long) Math.floor(100 * limit.probability().orElseThrow())));
  }

  private List<Saying> advice(CutFigures figures) {
    List<Saying> advice = new ArrayList<>();
    Figure peak = figures.at("force.peak.lateral");
    peak.budget().stream()
        .findFirst()
        .filter(share -> share.cause().part().equals("force-coefficients"))
        .ifPresent(
            share ->
                advice.add(
                    Saying.of("coefficients-blamed", "force", Arg.of(task.material().name()))));
    if (HeldStates.placeOpen(task.setup())) {
      advice.add(Saying.of("first-tooth-open", "chip"));
    }
    return advice;
  }
}
