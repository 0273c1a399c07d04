package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.JobPlan;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;

/** A planned job as plain text: what will do it, with which cut, and why. */
public final class PlanText {
  private final Sheet sheet = new Sheet(List.of());
  private final JobPlan plan;
  private final List<SetupPlan> shown;
  private final Set<Saying> said = new LinkedHashSet<>();

  private PlanText(JobPlan plan) {
    this.plan = plan;
    this.shown = shown(plan);
  }

  /** The page, each line ended, at most 80 columns where words can be parted. */
  public static String of(JobPlan plan) {
    return new PlanText(plan).write();
  }

  /** The job and its ranking alone, a line for each setup; of a refused one why. */
  public static String ranking(JobOutcome job) {
    var sheet = new Sheet(List.of());
    if (job instanceof JobOutcome.Planned planned) {
      PlanRanking.verdict(sheet, planned.plan());
      PlanRanking.rows(sheet, planned.plan());
    } else {
      Refused refused = ((JobOutcome.Unplannable) job).refused();
      sheet.paragraph(Sentences.refusal(refused).line());
    }
    return sheet.text();
  }

  /** What must be looked at of every cut that is planned, where rankings stand alone. */
  public static String beneathAll() {
    var sheet = new Sheet(List.of());
    sheet.paragraph(Sentences.text(Saying.of("chatter-not-examined", "stability")));
    return sheet.text();
  }

  /** Setups whose cut is worth reading: those that will do, or else the nearest miss. */
  private static List<SetupPlan> shown(JobPlan plan) {
    List<SetupPlan> tried =
        plan.setups().stream().filter(one -> one.best().isPresent() && !one.held()).toList();
    List<SetupPlan> able = tried.stream().filter(SetupPlan::feasible).toList();
    return able.isEmpty() ? tried.stream().limit(1).toList() : able;
  }

  private String write() {
    PlanRanking.verdict(sheet, plan);
    List<Saying> cautions = shared();
    cautions.addAll(plan.cautions());
    sheet.bullets("heading-cautions", cautions);
    sheet.heading("heading-ranking");
    PlanRanking.rows(sheet, plan);
    said.addAll(cautions);
    for (SetupPlan one : shown) {
      setup(one, one.best().orElseThrow());
    }
    sheet.bullets("heading-help", plan.advice());
    return sheet.text();
  }

  /** What must be looked at on every setup that is shown. */
  private List<Saying> shared() {
    List<Saying> shared = new ArrayList<>();
    if (!shown.isEmpty()) {
      shared.addAll(toLookAt(shown.get(0)).toList());
      shown.forEach(one -> shared.retainAll(one.cautions()));
    }
    return shared;
  }

  /** A setup's cut; of the first one its limits too. */
  private void setup(SetupPlan one, Prediction best) {
    sheet.heading(heading(one), Arg.of(one.setup()));
    CutWords.rows(sheet, one, best);
    toLookAt(one).filter(said::add).map(Sentences::text).forEach(sheet::bullet);
    boolean first = one.equals(shown.get(0));
    if (first) {
      LimitTable.write(sheet, best);
    }
    List<Saying> assumed = CutText.assumed(best).stream().filter(said::add).toList();
    sheet.bullets(first ? "heading-assumed" : "heading-assumed-besides", assumed);
  }

  /** Limits that do not hold stand in the table. */
  private static Stream<Saying> toLookAt(SetupPlan one) {
    return one.cautions().stream().filter(s -> !s.code().startsWith("limit-"));
  }

  private String heading(SetupPlan one) {
    if (!one.feasible()) {
      return "plan-setup-miss";
    }
    Optional<SetupPlan> take = plan.setups().stream().filter(SetupPlan::recommended).findFirst();
    return take.filter(one::equals).isPresent()
        ? "plan-setup-take"
        : one.recommended() ? "plan-setup" : "plan-setup-not-inspected";
  }
}
