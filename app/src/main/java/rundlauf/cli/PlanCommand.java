package rundlauf.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.maths.Draws;
import rundlauf.planning.JobPlan;
import rundlauf.planning.Planning;
import rundlauf.render.Sentences;
import rundlauf.render.plain.PlanText;
import rundlauf.usecase.PlanJob;
import rundlauf.wire.PlanDocument;

/** {@code plan JOB --bench BENCH}: the best cut for a job on each setup, and the setups ranked. */
@Command(name = "plan")
public final class PlanCommand implements Callable<Integer> {
  private final PlanJob planJob;
  private final Console console;

  @Parameters(arity = "1", paramLabel = "JOB", descriptionKey = "job")
  private String job = "";

  @Option(names = "--bench", paramLabel = "BENCH", required = true)
  private String bench = "";

  @Option(names = "--json")
  private boolean json;

  @Mixin private StateOptions options = new StateOptions();

  public PlanCommand(PlanJob planJob, Console console) {
    this.planJob = planJob;
    this.console = console;
  }

  @Override
  public Integer call() {
    Draws draws = options.draws();
    int states = options.states(Planning.STATES);
    var answers = new Answers(console, json);
    return answers.give(job, () -> answer(planJob.plan(job, bench, draws, states))).status();
  }

  private Answers.Answer answer(JobPlan plan) {
    String text =
        json
            ? PlanDocument.of(job, bench, plan, Sentences::text)
            : PlanText.of(plan).stripTrailing();
    return new Answers.Answer(text, Exit.of(plan));
  }
}
