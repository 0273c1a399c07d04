package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.JobPlan;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.render.Sentences;

/** A planned job as plain text: what will do it, with which cut, and why. */
public final class PlanText {
  private PlanText() {}

  /** The page, each line ended, at most 80 columns where words can be parted. */
  public static String of(JobPlan plan) {
    var sheet = new Sheet(List.of());
    ranking(sheet, plan);
    sheet.bullets("heading-cautions", plan.cautions());
    for (SetupPlan one : plan.setups()) {
      setup(sheet, one);
    }
    sheet.bullets("heading-help", plan.advice());
    return sheet.text();
  }

  /** The job and its ranking alone, a line for each setup; of a refused one why. */
  public static String ranking(JobOutcome job) {
    var sheet = new Sheet(List.of());
    if (job instanceof JobOutcome.Planned planned) {
      ranking(sheet, planned.plan());
    } else {
      Refused refused = ((JobOutcome.Unplannable) job).refused();
      sheet.paragraph(Sentences.refusal(refused).line());
    }
    return sheet.text();
  }

  private static void ranking(Sheet sheet, JobPlan plan) {
    sheet.paragraph(sheet.word("plan-title", Arg.of(plan.job().name())));
    sheet.paragraph(sheet.word(plan.possible() ? "plan-possible" : "plan-none-will-do"));
    Map<String, List<String>> without = new LinkedHashMap<>();
    for (SetupPlan one : plan.setups()) {
      if (one.held() || one.best().isPresent()) {
        sheet.row(one.setup(), line(sheet, one));
      } else {
        without.computeIfAbsent(reason(sheet, one), r -> new ArrayList<>()).add(one.setup());
      }
    }
    without.forEach((reason, names) -> sheet.bullet(String.join(", ", names) + ": " + reason));
  }

  /** Why nothing could be tried on a setup. */
  private static String reason(Sheet sheet, SetupPlan one) {
    return one.because().isEmpty()
        ? sheet.word("no-cut-tried")
        : Sentences.text(one.because().get(one.because().size() - 1));
  }

  /** How one setup stands to the job, in a few words. */
  private static String line(Sheet sheet, SetupPlan one) {
    if (one.held()) {
      return sheet.word("plan-held");
    }
    Prediction best = one.best().orElseThrow();
    Arg odds = CutText.odds(best.probability());
    Arg bound =
        one.boundBy().map(limit -> Arg.term("limit-" + limit.code())).orElse(Arg.term("nothing"));
    if (!one.feasible()) {
      return sheet.word("plan-line-miss", bound, odds);
    }
    String code = one.recommended() ? "plan-line" : "plan-line-not-inspected";
    Arg time = Arg.of(one.time().map(t -> clock(t)).orElse("-"));
    return sheet.word(code, time, odds, bound);
  }

  /** Short times in seconds, long ones in minutes, to what a shop clock shows. */
  private static String clock(double seconds) {
    boolean brief = seconds < 2 * Unit.MINUTE.toSi(1);
    Unit unit = brief ? Unit.SECOND : Unit.MINUTE;
    double shown = unit.fromSi(seconds);
    return Format.rounded(shown, shown < 10 ? 1 : 10) + " " + unit.printed();
  }

  /** A setup's cut with its limits. */
  private static void setup(Sheet sheet, SetupPlan one) {
    if (one.best().isEmpty()) {
      return;
    }
    Prediction best = one.best().get();
    String heading =
        one.held() ? "plan-setup-held" : one.feasible() ? "plan-setup" : "plan-setup-miss";
    sheet.heading(heading, Arg.of(one.setup()));
    if (one.held()) {
      return;
    }
    sheet.paragraph(CutText.cut(sheet, best.task(), best));
    one.passes()
        .ifPresent(
            passes ->
                sheet.paragraph(
                    sheet.word("plan-passes", Arg.of(passes.deep()), Arg.of(passes.wide()))));
    sheet.row(
        sheet.word("figure.kinematics.removalRate"),
        sheet.value(best.figures().at("kinematics.removalRate")));
    Set<Saying> cautions = new LinkedHashSet<>(one.cautions());
    best.cautions().stream()
        .filter(s -> !s.code().equals("chatter-not-examined"))
        .forEach(cautions::add);
    cautions.forEach(caution -> sheet.bullet(Sentences.text(caution)));
    CutText.limits(sheet, best);
    CutText.assumed(sheet, best);
  }
}
