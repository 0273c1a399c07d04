package rundlauf.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.usecase.Serving;

/** {@code serve}: the workbook in a browser, until it is stopped. */
@Command(name = "serve")
public final class ServeCommand implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65_535;

  private final Serving serving;
  private final Console console;

  @Option(names = "--store", paramLabel = "URL")
  private Optional<String> store = Optional.empty();

  @Option(names = "--host", paramLabel = "H")
  private String host = "127.0.0.1";

  @Option(names = "--port", paramLabel = "P")
  private int port = 8640;

  @Spec private CommandSpec spec = CommandSpec.create();

  public ServeCommand(Serving serving, Console console) {
    this.serving = serving;
    this.console = console;
  }

  @Override
  public Integer call() {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new Mistakes.WrongCall(
          spec.commandLine(), Refused.at(Place.NOWHERE, "usage-port", Arg.of(port)));
    }
    var answers = new Answers(console, false);
    Exit exit = answers.give("", this::start);
    if (exit == Exit.DONE) {
      Waiting.untilStopped();
    }
    return exit.status();
  }

  private Answers.Answer start() {
    Serving.Running running = serving.serve(new Serving.Call(store, host, port));
    Waiting.atTheEnd(running.stop());
    return new Answers.Answer(said(running), Exit.DONE);
  }

  /** What a user is told of a workbook that is being served. */
  static String said(Serving.Running running) {
    Saying open = Saying.of("serve-open", "", Arg.of(running.address()));
    Saying kept = Saying.of("serve-kept", "", Arg.of(running.store()));
    return Sentences.text(open) + "\n" + Sentences.text(kept);
  }
}
