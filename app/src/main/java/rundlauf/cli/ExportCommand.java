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

  /** Writes the package of a bench of a store into a folder; gives the paths of its files. */
  @FunctionalInterface
  public interface Exporting {
    List<String> export(Optional<String> store, Optional<String> bench, String folder);
  }

  public ExportCommand(Exporting exporting, Console console) {
    this.exporting = exporting;
    this.console = console;
  }

  @Override
  public Integer call() {
    var answers = new Answers(console, false);
    return answers.give(folder, () -> answer(exporting.export(store, bench, folder))).status();
  }

  private Answers.Answer answer(List<String> files) {
    Saying said = Saying.of("export-done", "", Arg.of(files.size()), Arg.of(folder));
    return new Answers.Answer(Sentences.text(said), Exit.DONE);
  }
}
