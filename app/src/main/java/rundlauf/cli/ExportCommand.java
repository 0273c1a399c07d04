package rundlauf.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.usecase.ExportBench;
import rundlauf.wire.StoreDocument;

/** {@code export DIR}: the package of a bench out of the store. */
@Command(name = "export")
public final class ExportCommand implements Callable<Integer> {
  private final Exporting exporting;
  private final Console console;

  @Parameters(paramLabel = "DIR", descriptionKey = "dir")
  private String folder = "";

  @Option(names = "--bench", paramLabel = "NAME")
  private Optional<String> bench = Optional.empty();

  @Option(names = "--store", paramLabel = "URL")
  private Optional<String> store = Optional.empty();

  @Option(names = "--json")
  private boolean json;

  /** Writes the package of a bench of a store into a folder. */
  @FunctionalInterface
  public interface Exporting {
    ExportBench.Exported export(Optional<String> store, Optional<String> bench, String folder);
  }

  public ExportCommand(Exporting exporting, Console console) {
    this.exporting = exporting;
    this.console = console;
  }

  @Override
  public Integer call() {
    var answers = new Answers(console, json);
    return answers.give(folder, () -> answer(exporting.export(store, bench, folder))).status();
  }

  private Answers.Answer answer(ExportBench.Exported exported) {
    List<String> files = exported.files();
    Saying said = Saying.of("export-done", "", Arg.of(files.size()), Arg.of(folder));
    String text =
        json ? StoreDocument.exported(folder, exported.bench(), files) : Sentences.text(said);
    return new Answers.Answer(text, Exit.DONE);
  }
}
