package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.planning.JobPlan;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** One job: what it asks, the ranking of the setups and why, then every cut. */
final class JobPart {
  /** What every plan says stands once, over all of them. */
  private static final String SAID_ABOVE = "chatter-not-examined";

  private JobPart() {}

  static Section section(Bench bench, JobPlan plan, int number) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Remarks.of(Remarks.Tone.NOTE, facts(plan)));
    if (!plan.possible()) {
      Saying none = Saying.of("report-none-will-do", "");
      blocks.add(Remarks.of(Remarks.Tone.CAUTION, List.of(none)));
    }
    TrialPart.addRemarks(Remarks.Tone.CAUTION, others(plan.cautions()), blocks);
    if (!plan.setups().isEmpty()) {
      blocks.add(RankingTable.of(bench, plan, number));
    }
    TrialPart.addRemarks(Remarks.Tone.ADVICE, plan.advice(), blocks);
    List<Section> cuts = new ArrayList<>();
    for (int i = 0; i < plan.setups().size(); i++) {
      CutPart.section(plan.setups().get(i), cutId(number, i)).ifPresent(cuts::add);
    }
    Saying heading = Saying.of("report-name", "", Arg.of(plan.job().name()));
    return new Section(id(number), heading, blocks, cuts);
  }

  static String id(int job) {
    return "job-" + job;
  }

  /** Id of the section that tells of a setup's cut. */
  static String cutId(int job, int setup) {
    return id(job) + "-" + (setup + 1);
  }

  /** The section of the setup itself, where the bench has it. */
  static Optional<Cell> setupLink(Bench bench, SetupPlan plan) {
    List<String> names = bench.setups().stream().map(Setup::name).toList();
    int number = names.indexOf(plan.setup());
    return number < 0 ? Optional.empty() : Optional.of(SetupSection.link(plan.setup(), number));
  }

  static List<Saying> others(List<Saying> cautions) {
    return cautions.stream().filter(s -> !s.code().equals(SAID_ABOVE)).toList();
  }

  private static List<Saying> facts(JobPlan plan) {
    var job = plan.job();
    List<Saying> facts = new ArrayList<>();
    job.feature().ifPresent(f -> facts.add(Saying.of("report-job-feature-" + f, "")));
    job.depth().ifPresent(q -> facts.add(size("report-job-depth", q)));
    job.width().ifPresent(q -> facts.add(size("report-job-width", q)));
    job.length().ifPresent(q -> facts.add(size("report-job-length", q)));
    job.tolerance().ifPresent(q -> facts.add(size("report-job-tolerance", q)));
    return facts;
  }

  private static Saying size(String code, rundlauf.quantity.Quantity quantity) {
    return Saying.of(code, "", Arg.of(quantity.si(), quantity.unit()));
  }
}
