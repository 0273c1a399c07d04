package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.JobPlan;
import rundlauf.planning.Rank;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.report.Table.Row;

/** The best setup for every job, or that none will do it: one row a job. */
final class BestTable {
  private BestTable() {}

  static Section section(Bench bench, List<JobOutcome> jobs) {
    List<Row> rows = new ArrayList<>();
    for (JobOutcome job : jobs) {
      rows.add(row(bench, job, rows.size() + 1));
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-best-column-job"),
            Table.heading("report-best-column-setup"),
            Table.heading("report-job-column-cut"),
            Table.heading("report-job-column-odds"));
    Saying caption = Saying.of("report-best-caption", "");
    return Section.of(
        "best",
        Saying.of("report-jobs", ""),
        List.of(
            Table.of(caption, columns, rows, Table.Kind.FIGURES),
            Remarks.of(Remarks.Tone.CAUTION, cautions(bench, jobs))));
  }

  private static List<Saying> cautions(Bench bench, List<JobOutcome> jobs) {
    Set<Saying> said = new LinkedHashSet<>();
    for (JobOutcome job : jobs) {
      if (job instanceof JobOutcome.Planned planned) {
        planned.plan().setups().stream()
            .filter(SetupPlan::held)
            .flatMap(held -> bench.setup(held.setup()).stream())
            .map(Setup::spindle)
            .forEach(s -> said.add(Saying.of("report-spindle-held", "", Arg.of(s))));
      }
    }
    said.add(Saying.of("chatter-not-examined", ""));
    return List.copyOf(said);
  }

  private static Row row(Bench bench, JobOutcome outcome, int number) {
    Cell job =
        new Cell.Link(
            Saying.of("report-name", "", Arg.of(outcome.job().name())), JobPart.id(number));
    if (!(outcome instanceof JobOutcome.Planned planned)) {
      return none(job, "report-best-not-planned");
    }
    JobPlan plan = planned.plan();
    for (int i = 0; i < plan.setups().size(); i++) {
      Optional<Prediction> cut = CutPart.shown(plan.setups().get(i));
      if (plan.setups().get(i).recommended() && cut.isPresent()) {
        return row(bench, plan, i, cut.get(), job, JobPart.cutId(number, i));
      }
    }
    return none(job, "report-best-none");
  }

  private static Row row(
      Bench bench, JobPlan plan, int at, Prediction cut, Cell job, String cutId) {
    SetupPlan best = plan.setups().get(at);
    List<String> alike = plan.rank(best).map(Rank::alike).orElse(List.of());
    Saying name =
        alike.isEmpty()
            ? Saying.of("report-name", "", Arg.of(best.setup()))
            : Saying.of("report-best-alike", "", Arg.of(best.setup()), Arg.list(alike));
    int number = bench.setups().stream().map(Setup::name).toList().indexOf(best.setup());
    return Row.of(
        job,
        new Cell.Link(name, SetupSection.id(number)),
        new Cell.Link(CutPart.words(best, cut), cutId),
        new Cell.Said(RankingTable.odds(cut.probability())));
  }

  private static Row none(Cell job, String code) {
    return Row.of(job, new Cell.Said(Saying.of(code, "")), new Cell.Blank(), new Cell.Blank());
  }
}
