package rundlauf.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.usecase.PublishBench;
import rundlauf.wire.FilesDocument;

/** {@code publish BENCH --out DIR}: the report and the package of a bench. */
@Command(name = "publish")
public final class PublishCommand implements Callable<Integer> {
  private final PublishBench publishBench;
  private final Console console;

  @Parameters(paramLabel = "BENCH", descriptionKey = "bench")
  private String bench = "";

  @Option(names = "--out", paramLabel = "DIR", required = true)
  private String out = "";

  @Option(names = "--json")
  private boolean json;

  @Mixin private DrawOptions draws = new DrawOptions();

  public PublishCommand(PublishBench publishBench, Console console) {
    this.publishBench = publishBench;
    this.console = console;
  }

  @Override
  public Integer call() {
    var asked = draws.draws();
    var answers = new Answers(console, json);
    return answers.give(bench, () -> answer(publishBench.publish(bench, out, asked))).status();
  }

  private Answers.Answer answer(PublishBench.Published published) {
    Saying said =
        Saying.of("publish-done", "", Arg.of(published.folder()), Arg.of(published.files().size()));
    String text =
        json
            ? FilesDocument.of(bench, published.folder(), published.files())
            : Sentences.text(said);
    return new Answers.Answer(text, Exit.of(published.comparison()));
  }
}
