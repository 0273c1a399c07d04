package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.JobPlan;
import rundlauf.planning.Rank;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;

/** How the setups stand to a job, a line for each. */
final class PlanRanking {
  private PlanRanking() {}

  /** The job and which setup to take, in two lines. */
  static void verdict(Sheet sheet, JobPlan plan) {
    sheet.paragraph(sheet.word("plan-title", Arg.of(plan.job().name())));
    Optional<SetupPlan> take = plan.setups().stream().filter(SetupPlan::recommended).findFirst();
    boolean tried = plan.setups().stream().anyMatch(one -> one.best().isPresent());
    sheet.paragraph(
        take.isPresent()
            ? take(sheet, plan, take.get())
            : sheet.word(tried ? "plan-none-will-do" : "plan-nothing-tried"));
  }

  private static String take(Sheet sheet, JobPlan plan, SetupPlan one) {
    List<String> alike = plan.rank(one).map(Rank::alike).orElse(List.of());
    return alike.isEmpty()
        ? sheet.word("plan-take", Arg.of(one.setup()))
        : sheet.word("plan-take-one-of", Arg.of(one.setup()), Arg.list(alike));
  }

  /** Those with a cut, best first; then those without one, by their reasons; those on hold last. */
  static void rows(Sheet sheet, JobPlan plan) {
    Map<Saying, List<String>> untried = new LinkedHashMap<>();
    for (SetupPlan one : plan.setups()) {
      if (one.held()) {
        continue;
      }
      if (one.best().isPresent()) {
        Optional<Rank> rank = plan.rank(one);
        String words = line(sheet, one, one.best().get());
        sheet.row(name(sheet, one, rank), words + alike(sheet, rank));
      } else {
        untried.computeIfAbsent(why(one), w -> new ArrayList<>()).add(one.setup());
      }
    }
    if (plan.setups().stream().filter(PlanRanking::missed).count() > 1) {
      sheet.row("", sheet.word("plan-misses-alike", Arg.of(Rank.ODDS_TOLD)));
    }
    untried.forEach((why, names) -> sheet.missing(names, "plan-not-tried", why));
    plan.setups().stream().filter(SetupPlan::held).forEach(one -> held(sheet, one));
  }

  private static boolean missed(SetupPlan one) {
    return one.best().isPresent() && !one.feasible() && !one.held();
  }

  private static String name(Sheet sheet, SetupPlan one, Optional<Rank> rank) {
    return rank.map(r -> sheet.word("plan-rank", Arg.of(r.place()), Arg.of(one.setup())))
        .orElseGet(() -> sheet.word("plan-no-rank", Arg.of(one.setup())));
  }

  private static String alike(Sheet sheet, Optional<Rank> rank) {
    return rank.map(Rank::alike)
        .filter(alike -> !alike.isEmpty())
        .map(alike -> sheet.word("plan-alike", Arg.list(alike)))
        .orElse("");
  }

  private static Saying why(SetupPlan one) {
    return one.because().isEmpty() ? Saying.of("no-cut-tried", "cut") : one.because().get(0);
  }

  private static void held(Sheet sheet, SetupPlan one) {
    sheet.row(
        sheet.word("plan-no-rank", Arg.of(one.setup())),
        sheet.word("plan-held") + " " + Sentences.text(why(one)));
  }

  private static String reasons(SetupPlan one) {
    return one.because().stream().map(Sentences::text).collect(Collectors.joining(" "));
  }

  private static String line(Sheet sheet, SetupPlan one, Prediction best) {
    Arg odds = LimitTable.odds(sheet, best.probability());
    if (!one.feasible()) {
      return miss(sheet, one, odds);
    }
    Arg bound = Arg.of(one.boundBy().map(l -> name(sheet, l)).orElse(sheet.word("plan-unbound")));
    String time = one.time().map(CutWords::time).orElse(sheet.word("plan-no-time"));
    String words = sheet.word("plan-line", Arg.of(time), odds, bound);
    return one.recommended() ? words : sheet.word("plan-not-inspected") + " " + words;
  }

  private static String miss(Sheet sheet, SetupPlan one, Arg odds) {
    Optional<Limit> failing = one.boundBy().filter(limit -> limit.judged() && !limit.holds());
    if (failing.isEmpty() && !one.because().isEmpty()) {
      return sheet.word("plan-not-told") + " " + reasons(one);
    }
    String limit = failing.map(l -> name(sheet, l)).orElse(sheet.word("plan-all-limits"));
    return sheet.word("plan-line-miss", Arg.of(limit), odds);
  }

  private static String name(Sheet sheet, Limit limit) {
    return sheet.word("term.limit-" + limit.code());
  }
}
