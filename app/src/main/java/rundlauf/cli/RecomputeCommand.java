package rundlauf.cli;

import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.usecase.RecomputePackage;
import rundlauf.wire.RecomputedDocument;

/** {@code recompute PACKAGE}: every published figure derived again from its readings. */
@Command(name = "recompute")
public final class RecomputeCommand implements Callable<Integer> {
  private final RecomputePackage recomputePackage;
  private final Console console;

  @Parameters(paramLabel = "PACKAGE", descriptionKey = "package")
  private String place = "";

  @Option(names = "--json")
  private boolean json;

  public RecomputeCommand(RecomputePackage recomputePackage, Console console) {
    this.recomputePackage = recomputePackage;
    this.console = console;
  }

  @Override
  public Integer call() {
    var answers = new Answers(console, json);
    return answers.give(place, () -> answer(recomputePackage.recompute(place))).status();
  }

  private Answers.Answer answer(RecomputePackage.Recomputed found) {
    boolean same = found.differs().isEmpty();
    String said =
        same
            ? Sentences.text(Saying.of("recompute-same", "", Arg.of(found.figures())))
            : found.differs().stream().map(Sentences::text).collect(Collectors.joining("\n"));
    String text =
        json
            ? RecomputedDocument.of(place, found.figures(), found.differs(), Sentences::text)
            : said;
    return new Answers.Answer(text, same ? Exit.DONE : Exit.LOOK);
  }
}
