package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.JobPlan;
import rundlauf.planning.Rank;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.report.Table.Row;

/** The setups for a job, best first, each with its cut and what stands in its way. */
final class RankingTable {
  private static final Scale MINUTES = new Scale(Unit.MINUTE, 1);

  private RankingTable() {}

  static Table of(Bench bench, JobPlan plan, int job) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < plan.setups().size(); i++) {
      rows.add(row(bench, plan, plan.setups().get(i), JobPart.cutId(job, i)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("setup", "standing", "cut", "time", "wall", "odds", "bound")) {
      columns.add(Table.heading("report-job-column-" + name));
    }
    return Table.of(
        Saying.of("report-ranking", "", Arg.of(Rank.ODDS_TOLD)), columns, rows, Table.Kind.FIGURES);
  }

  private static Row row(Bench bench, JobPlan job, SetupPlan plan, String cut) {
    Optional<Prediction> best = CutPart.shown(plan);
    return Row.of(
        JobPart.setupLink(bench, plan)
            .orElse(new Cell.Said(Saying.of("report-name", "", Arg.of(plan.setup())))),
        new Cell.SaidAll(standing(job, plan)),
        best.isPresent()
            ? new Cell.Link(CutPart.words(plan, best.get()), cut)
            : new Cell.Said(Saying.of("report-no-cut", "")),
        best.isPresent() && plan.time().isPresent()
            ? new Cell.Number(plan.time().get(), MINUTES)
            : new Cell.Blank(),
        best.map(RankingTable::wall).orElse(new Cell.Blank()),
        best.<Cell>map(p -> new Cell.Said(odds(p.probability()))).orElse(new Cell.Blank()),
        plan.boundBy().<Cell>map(limit -> new Cell.Said(name(limit))).orElse(new Cell.Blank()));
  }

  private static List<Saying> standing(JobPlan job, SetupPlan plan) {
    List<Saying> all = new ArrayList<>();
    if (plan.held()) {
      all.add(Saying.of("report-job-held", ""));
    } else if (plan.recommended()) {
      all.add(Saying.of("report-job-recommended", ""));
    } else if (plan.feasible()) {
      all.add(Saying.of("report-job-not-inspected", ""));
    } else {
      String because = plan.because().isEmpty() ? "" : "-because";
      all.add(Saying.of("report-job-will-not-do" + because, ""));
    }
    job.rank(plan)
        .map(Rank::alike)
        .filter(alike -> !alike.isEmpty())
        .ifPresent(alike -> all.add(Saying.of("report-job-alike", "", Arg.list(alike))));
    if (!plan.held()) {
      all.addAll(plan.because());
    }
    return all;
  }

  /** The wall error of largest size. */
  private static Cell wall(Prediction best) {
    return best.limits().stream()
        .filter(limit -> limit.code().equals("wall-error"))
        .findFirst()
        .<Cell>map(limit -> predicted(limit.value(), limit.assumedOfValue()))
        .orElse(new Cell.Blank());
  }

  static Cell predicted(Figure figure, List<Saying> assumed) {
    return new Cell.Predicted(figure, !assumed.isEmpty());
  }

  static Saying name(Limit limit) {
    return Saying.of("term.limit-" + limit.code(), "");
  }

  /** So few draws cannot tell a probability of 99 % from certainty, nor 1 % from none. */
  static Saying odds(double probability) {
    if (probability > 0.99) {
      return Saying.of("report-job-odds-over", "");
    }
    return probability < 0.01
        ? Saying.of("report-job-odds-under", "")
        : Saying.of("report-job-odds", "", Arg.of(Math.round(100 * probability)));
  }
}
