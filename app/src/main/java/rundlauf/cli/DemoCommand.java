package rundlauf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rundlauf.planning.JobOutcome;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.render.plain.ComparisonText;
import rundlauf.render.plain.PlanText;
import rundlauf.usecase.Serving;
import rundlauf.usecase.ShowDemo;

/** {@code demo}: the invented bench laid out, side by side, its report, and its workbook. */
@Command(name = "demo")
public final class DemoCommand implements Callable<Integer> {
  /** Listens on this machine alone. */
  private static final String HOST = "127.0.0.1";

  private final ShowDemo showDemo;
  private final UnaryOperator<String> storing;
  private final Serving serving;
  private final Console console;

  @Option(names = "--no-serve")
  private boolean noServe;

  @Option(names = "--out", paramLabel = "DIR")
  private Optional<String> out = Optional.empty();

  @Mixin private DrawOptions draws = new DrawOptions();

  /**
   * @param storing takes the bench that lies in a folder into a store of its own there; gives the
   *     store's address
   */
  public DemoCommand(
      ShowDemo showDemo, UnaryOperator<String> storing, Serving serving, Console console) {
    this.showDemo = showDemo;
    this.storing = storing;
    this.serving = serving;
    this.console = console;
  }

  @Override
  public Integer call() {
    var asked = draws.draws();
    var answers = new Answers(console, false);
    List<String> stores = new ArrayList<>();
    Exit shown =
        answers.give(
            out.orElse(""),
            () -> {
              ShowDemo.Shown all = showDemo.show(out, asked);
              stores.add(storing.apply(all.laid().folder()));
              return answer(all);
            });
    if (noServe || stores.isEmpty()) {
      return shown.status();
    }
    var call = new Serving.Call(Optional.of(stores.get(0)), HOST, 0, false);
    return shown.and(ServeCommand.serve(serving, call, answers)).status();
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
    return new Answers.Answer(text.toString().stripTrailing(), Exit.of(shown.comparison()));
  }

  private static void say(StringBuilder text, Saying saying) {
    text.append('\n').append(Sentences.text(saying));
  }
}
