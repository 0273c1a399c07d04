package rundlauf.cli;

import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** A wrong call and a fault of ours, each in one sentence. */
final class Mistakes {
  private final Console console;

  Mistakes(Console console) {
    this.console = console;
  }

  /** A mistake whose sentence is known where it is found. */
  static final class WrongCall extends ParameterException {
    private static final long serialVersionUID = 1L;

    private final transient Refused refused;

    WrongCall(CommandLine line, Refused refused) {
      super(line, refused.getMessage());
      this.refused = refused;
    }
  }

  /** It was called as no command takes it. */
  int call(ParameterException mistake, String[] args) {
    CommandLine line = mistake.getCommandLine();
    Refused refused =
        mistake instanceof WrongCall known ? known.refused : found(mistake, name(line));
    say(refused);
    return Exit.USAGE.status();
  }

  private static Refused found(ParameterException mistake, Arg name) {
    if (mistake instanceof UnmatchedArgumentException unmatched) {
      String first = unmatched.getUnmatched().get(0);
      return Refused.at(Place.NOWHERE, "usage-unknown", name, Arg.typed(first));
    }
    if (mistake instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      String labels =
          missing.getMissing().stream().map(Mistakes::label).collect(Collectors.joining(", "));
      return Refused.at(Place.NOWHERE, "usage-missing", name, Arg.of(labels));
    }
    if (mistake.getCommandLine().getParent() == null) {
      String commands = String.join(", ", mistake.getCommandLine().getSubcommands().keySet());
      return Refused.at(Place.NOWHERE, "usage-no-command", name, Arg.of(commands));
    }
    if (conversionFailed(mistake)) {
      Arg value = Arg.typed(mistake.getValue());
      return Refused.at(
          Place.NOWHERE, "usage-number", name, Arg.of(label(mistake.getArgSpec())), value);
    }
    return Refused.at(
        Place.NOWHERE, "usage-value", name, Arg.typed(String.valueOf(mistake.getMessage())));
  }

  private static boolean conversionFailed(ParameterException mistake) {
    return mistake.getValue() != null && mistake.getArgSpec() != null;
  }

  private static String label(ArgSpec arg) {
    return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
  }

  static Arg name(CommandLine line) {
    return Arg.of(line.getCommandSpec().qualifiedName());
  }

  /** Something broke that no input should be able to break. */
  int execution(Exception fault, CommandLine line, CommandLine.ParseResult parsed) {
    return fault instanceof ParameterException mistake
        ? call(mistake, new String[0])
        : fault(fault).status();
  }

  /** The exit for a fault; nothing is said when the reader of our output just left. */
  Exit fault(Throwable fault) {
    if (fault instanceof Console.OutputLost lost) {
      return lost.readerLeft() ? Exit.DONE : outputLost(lost);
    }
    console.details(fault);
    String kind = fault.getClass().getSimpleName();
    say(Refused.at(Place.NOWHERE, "fault-outside", Arg.of(kind)));
    return Exit.FAULT;
  }

  private Exit outputLost(Console.OutputLost lost) {
    String reason = String.valueOf(lost.getMessage());
    say(Refused.at(Place.NOWHERE, "output-lost", Arg.typed(reason)));
    return Exit.FAULT;
  }

  private void say(Refused refused) {
    console.remark(Sentences.refusal(refused).line());
  }
}
