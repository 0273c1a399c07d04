package rundlauf.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rundlauf.planning.JobOutcome;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.render.plain.ComparisonText;
import rundlauf.render.plain.PlanText;
import rundlauf.usecase.ShowDemo;

/** {@code demo}: the invented bench laid out, side by side, and its report. */
@Command(name = "demo")
public final class DemoCommand implements Callable<Integer> {
  private final ShowDemo showDemo;
  private final Console console;

  @Option(names = "--no-serve")
  private boolean noServe;

  @Option(names = "--out", paramLabel = "DIR")
  private Optional<String> out = Optional.empty();

  @Mixin private DrawOptions draws = new DrawOptions();

  public DemoCommand(ShowDemo showDemo, Console console) {
    this.showDemo = showDemo;
    this.console = console;
  }

  @Override
  public Integer call() {
    var asked = draws.draws();
    var answers = new Answers(console, false);
    return answers.give(out.orElse(""), () -> answer(showDemo.show(out, asked))).status();
  }

  private Answers.Answer answer(ShowDemo.Shown shown) {
    StringBuilder text = new StringBuilder(ComparisonText.of(shown.comparison()).stripTrailing());
    text.append('\n');
    for (JobOutcome job : shown.jobs()) {
      text.append('\n').append(PlanText.ranking(job));
    }
    if (!shown.jobs().isEmpty()) {
      text.append('\n').append(PlanText.beneathAll());
    }
    say(text, Saying.of("demo-bench-lies", "", Arg.of(shown.laid().bench())));
    say(text, Saying.of("demo-report-lies", "", Arg.of(shown.report())));
    if (!noServe) {
      say(text, Saying.of("demo-not-served", ""));
    }
    return new Answers.Answer(text.toString().stripTrailing(), Exit.of(shown.comparison()));
  }

  private static void say(StringBuilder text, Saying saying) {
    text.append('\n').append(Sentences.text(saying));
  }
}
