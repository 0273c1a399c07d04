package rundlauf.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.maths.Draws;
import rundlauf.reduce.Reduced;
import rundlauf.render.Sentences;
import rundlauf.render.plain.ResultText;
import rundlauf.usecase.ReduceTrial;
import rundlauf.wire.ResultDocument;

/** {@code reduce TRIAL…}: readings in, figures out; one input after the other, none kept. */
@Command(name = "reduce")
public final class ReduceCommand implements Callable<Integer> {
  private final ReduceTrial reduceTrial;
  private final Console console;

  @Parameters(arity = "1..*", paramLabel = "TRIAL", descriptionKey = "trial")
  private List<String> trials = List.of();

  @Option(names = "--json")
  private boolean json;

  @Mixin private DrawOptions draws = new DrawOptions();

  public ReduceCommand(ReduceTrial reduceTrial, Console console) {
    this.reduceTrial = reduceTrial;
    this.console = console;
  }

  @Override
  public Integer call() {
    Draws asked = draws.draws();
    var answers = new Answers(console, json);
    Exit worst = Exit.DONE;
    for (String trial : trials) {
      worst = worst.and(answers.give(trial, () -> answer(reduceTrial.reduce(trial, asked))));
    }
    return worst.status();
  }

  private Answers.Answer answer(Reduced result) {
    String text =
        json ? ResultDocument.of(result, Sentences::text) : ResultText.of(result).stripTrailing();
    return new Answers.Answer(text, Exit.of(result));
  }
}
