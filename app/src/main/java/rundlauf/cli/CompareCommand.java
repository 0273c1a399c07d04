package rundlauf.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.maths.Draws;
import rundlauf.render.Sentences;
import rundlauf.render.plain.ComparisonText;
import rundlauf.report.BenchComparison;
import rundlauf.usecase.CompareBench;
import rundlauf.wire.ComparisonDocument;

/** {@code compare BENCH}: every setup of a bench side by side. */
@Command(name = "compare")
public final class CompareCommand implements Callable<Integer> {
  private final CompareBench compareBench;
  private final Console console;

  @Parameters(arity = "1", paramLabel = "BENCH", descriptionKey = "bench")
  private String bench = "";

  @Option(names = "--json")
  private boolean json;

  @Mixin private DrawOptions draws = new DrawOptions();

  public CompareCommand(CompareBench compareBench, Console console) {
    this.compareBench = compareBench;
    this.console = console;
  }

  @Override
  public Integer call() {
    Draws asked = draws.draws();
    var answers = new Answers(console, json);
    return answers.give(bench, () -> answer(compareBench.compare(bench, asked))).status();
  }

  private Answers.Answer answer(BenchComparison found) {
    String text =
        json
            ? ComparisonDocument.of(bench, found, Sentences::text)
            : ComparisonText.of(found).stripTrailing();
    return new Answers.Answer(text, Exit.of(found));
  }
}
