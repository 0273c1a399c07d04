package rundlauf.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.usecase.BenchTally;
import rundlauf.usecase.KeepContents;
import rundlauf.wire.StoreDocument;

/** {@code import PACKAGE}: a package, or a bench without its two documents, into the store. */
@Command(name = "import")
public final class ImportCommand implements Callable<Integer> {
  private final BiFunction<Optional<String>, String, KeepContents.Imported> importing;
  private final Console console;

  @Parameters(paramLabel = "PACKAGE", descriptionKey = "package")
  private String place = "";

  @Option(names = "--store", paramLabel = "URL")
  private Optional<String> store = Optional.empty();

  @Option(names = "--json")
  private boolean json;

  /**
   * @param importing takes a package at a place into a store
   */
  public ImportCommand(
      BiFunction<Optional<String>, String, KeepContents.Imported> importing, Console console) {
    this.importing = importing;
    this.console = console;
  }

  @Override
  public Integer call() {
    var answers = new Answers(console, json);
    return answers.give(place, () -> answer(importing.apply(store, place))).status();
  }

  private Answers.Answer answer(KeepContents.Imported imported) {
    BenchTally fresh = imported.fresh();
    String text =
        json
            ? StoreDocument.imported(place, imported.bench(), counts(fresh))
            : Sentences.text(said(imported.bench(), fresh));
    return new Answers.Answer(text, Exit.DONE);
  }

  private static Saying said(String bench, BenchTally fresh) {
    return fresh.isNothing()
        ? Saying.of("import-nothing-new", "", Arg.of(bench))
        : Saying.of(
            "import-done",
            "",
            Arg.of(bench),
            Arg.of(fresh.trials()),
            Arg.of(fresh.readings()),
            Arg.of(fresh.struck()),
            Arg.of(fresh.files()));
  }

  private static Map<String, Integer> counts(BenchTally fresh) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    counts.put("benches", fresh.benches());
    counts.put("trials", fresh.trials());
    counts.put("readings", fresh.readings());
    counts.put("struck", fresh.struck());
    counts.put("files", fresh.files());
    return counts;
  }
}
