package rundlauf.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.usecase.Kept;
import rundlauf.wire.StoreDocument;

/** {@code backup --out FILE}: a copy of the whole store. */
@Command(name = "backup")
public final class BackupCommand implements Callable<Integer> {
  private final BiFunction<Optional<String>, String, Kept.Copy> copying;
  private final Console console;

  @Option(names = "--out", paramLabel = "FILE", required = true)
  private String out = "";

  @Option(names = "--store", paramLabel = "URL")
  private Optional<String> store = Optional.empty();

  @Option(names = "--json")
  private boolean json;

  /**
   * @param copying copies a store into a file or folder
   */
  public BackupCommand(BiFunction<Optional<String>, String, Kept.Copy> copying, Console console) {
    this.copying = copying;
    this.console = console;
  }

  @Override
  public Integer call() {
    var answers = new Answers(console, json);
    return answers.give(out, () -> answer(copying.apply(store, out))).status();
  }

  private Answers.Answer answer(Kept.Copy copy) {
    long kilobytes = (copy.bytes() + 999) / 1000;
    Saying said = Saying.of("backup-done", "", Arg.of(copy.place()), Arg.of(kilobytes));
    String text =
        json
            ? StoreDocument.copied(out, copy.store(), copy.place(), copy.bytes())
            : Sentences.text(said);
    return new Answers.Answer(text, Exit.DONE);
  }
}
