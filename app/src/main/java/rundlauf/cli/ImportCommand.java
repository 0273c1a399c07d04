package rundlauf.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;

/** {@code import PACKAGE}: a package, or a bench without its two documents, into the store. */
@Command(name = "import")
public final class ImportCommand implements Callable<Integer> {
  private final BiFunction<Optional<String>, String, String> importing;
  private final Console console;

  @Parameters(paramLabel = "PACKAGE", descriptionKey = "package")
  private String place = "";

  @Option(names = "--store", paramLabel = "URL")
  private Optional<String> store = Optional.empty();

  /**
   * @param importing takes a package at a place into a store; gives the name of its bench
   */
  public ImportCommand(BiFunction<Optional<String>, String, String> importing, Console console) {
    this.importing = importing;
    this.console = console;
  }

  @Override
  public Integer call() {
    var answers = new Answers(console, false);
    return answers.give(place, () -> answer(importing.apply(store, place))).status();
  }

  private static Answers.Answer answer(String bench) {
    String text = Sentences.text(Saying.of("import-done", "", Arg.of(bench)));
    return new Answers.Answer(text, Exit.DONE);
  }
}
