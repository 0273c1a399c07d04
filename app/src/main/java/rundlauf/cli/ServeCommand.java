package rundlauf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
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

  @Option(names = "--tls")
  private boolean tls;

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
    var call = new Serving.Call(store, host, port, tls);
    return serve(serving, call, new Answers(console, false)).status();
  }

  /** Serves until it is stopped; how it ended. */
  static Exit serve(Serving serving, Serving.Call call, Answers answers) {
    List<Serving.Running> running = new ArrayList<>();
    Exit exit =
        answers.give(
            "",
            () -> {
              running.add(serving.serve(call));
              return new Answers.Answer(said(running.get(0)), Exit.DONE);
            });
    running.forEach(Waiting::whileServed);
    return exit;
  }

  /** What a user is told of a workbook that is being served. */
  private static String said(Serving.Running running) {
    Saying open = Saying.of("serve-open", "", Arg.of(running.address()));
    Saying kept = Saying.of("serve-kept", "", Arg.of(running.store()));
    List<Saying> said = new ArrayList<>(List.of(open, kept));
    Optional<String> fingerprint = running.fingerprint();
    fingerprint.ifPresent(f -> said.add(Saying.of("serve-tls", "", Arg.of(f))));
    if (running.wide()) {
      said.add(Saying.of("serve-devices", "", Arg.of(running.address() + "devices")));
      if (fingerprint.isEmpty()) {
        said.add(Saying.of("serve-plain", ""));
      }
    }
    return said.stream().map(Sentences::text).collect(Collectors.joining("\n"));
  }
}
