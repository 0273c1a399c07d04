package rundlauf.wire;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.JobPlan;
import rundlauf.planning.Rank;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** The JSON document of a job planned on every setup of a bench. */
public final class PlanDocument {
  private final JsonLine json;

  private PlanDocument(JsonLine json) {
    this.json = json;
  }

  /**
   * The document on one line, without a line end.
   *
   * @param file the job as the user named it
   * @param bench the bench as the user named it
   */
  public static String of(
      String file, String bench, JobPlan plan, Function<Saying, String> wording) {
    return JsonLine.of(wording, json -> new PlanDocument(json).write(file, bench, plan));
  }

  private void write(String file, String bench, JobPlan plan) {
    json.text("file", file);
    json.text("bench", bench);
    json.text("job", plan.job().name());
    json.text("feature", plan.job().feature());
    json.text(
        "recommended",
        plan.setups().stream().filter(SetupPlan::recommended).map(SetupPlan::setup).findFirst());
    json.list("setups", plan.setups(), one -> setup(plan, one));
    json.sayings("cautions", plan.cautions());
    json.sayings("advice", plan.advice());
  }

  private void setup(JobPlan plan, SetupPlan one) {
    json.text("setup", one.setup());
    Optional<Rank> rank = plan.rank(one);
    rank.ifPresentOrElse(r -> json.count("rank", r.place()), () -> json.nothing("rank"));
    json.texts("notToldApartFrom", rank.map(Rank::alike).orElse(List.of()));
    json.truth("feasible", one.feasible());
    json.truth("hold", one.held());
    json.text("standing", one.standing().code());
    one.best()
        .ifPresentOrElse(
            best -> json.object("cut", () -> cut(one, best)), () -> json.nothing("cut"));
    json.figure("time", time(one));
    json.figure("removalRate", figure(one, "kinematics.removalRate"));
    wall(one);
    if (one.best().isPresent()) {
      json.number("probability", one.best().get().probability());
    } else {
      json.nothing("probability");
    }
    json.texts("covers", one.best().map(Prediction::covers).orElse(List.of()));
    json.text("boundBy", one.boundBy().map(Limit::code));
    json.list(
        "limits",
        one.best().map(Prediction::limits).orElse(List.of()),
        limit -> CutDocument.limit(json, limit));
    json.sayings("because", one.because());
    json.sayings("cautions", one.cautions());
  }

  private void cut(SetupPlan one, Prediction best) {
    var cut = best.task().cut();
    json.text("cutter", one.cutter());
    json.text("operation", cut.operation().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    exact("speed", cut.speed().si(), Unit.RPM);
    double feed = best.figures().at("kinematics.feed").value();
    double perTooth = feed / cut.speed().si() / best.task().cutter().teeth();
    exact("feedPerTooth", perTooth, Unit.MICROMETRE);
    exact("feed", feed, Unit.MILLIMETRE_PER_MINUTE);
    exact("axial", cut.axial().si(), Unit.MILLIMETRE);
    exact("radial", cut.radial().si(), Unit.MILLIMETRE);
    one.passes()
        .ifPresent(
            passes ->
                json.object(
                    "passes",
                    () -> {
                      json.count("deep", passes.deep());
                      json.count("wide", passes.wide());
                    }));
  }

  private void exact(String name, double si, Unit unit) {
    json.figure(name, Measured.exact(si, unit));
  }

  private static Figure time(SetupPlan one) {
    return one.time()
        .<Figure>map(t -> Measured.exact(t, Unit.MINUTE))
        .orElseGet(() -> new Missing(Unit.MINUTE, none()));
  }

  private static Figure figure(SetupPlan one, String path) {
    return one.best()
        .map(best -> best.figures().at(path))
        .orElseGet(() -> new Missing(Unit.CUBIC_MILLIMETRE_PER_MINUTE, none()));
  }

  /** The wall error as the job judges it: the size of the largest. */
  private void wall(SetupPlan one) {
    Optional<Limit> judged =
        one.best().stream()
            .flatMap(best -> best.limits().stream())
            .filter(limit -> limit.code().equals("wall-error"))
            .findFirst();
    Saying why = one.best().isEmpty() ? none() : Saying.of("wall-error-not-asked", "wallError");
    json.figure(
        "wallError",
        judged.map(Limit::value).orElseGet(() -> new Missing(Unit.MICROMETRE, why)),
        judged.map(Limit::assumedOfValue).orElse(List.of()));
  }

  private static Saying none() {
    return Saying.of("no-cut-tried", "cut");
  }
}
