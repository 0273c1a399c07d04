package rundlauf.cli;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

/** The command line as a whole: its commands, its help, and what happens to a wrong call. */
public final class CommandLines {
  /** Where picocli finds the help's sentences, as {@code rundlauf.COMMAND.OPTION}. */
  private static final String BUNDLE = "rundlauf.render.sentences";

  private static final int HELP_WIDTH = 80;

  private CommandLines() {}

  /** What stands before the command. */
  @Command(name = "rundlauf", versionProvider = Version.class)
  static final class Rundlauf {
    @Option(names = "--version", versionHelp = true)
    private boolean version;
  }

  /** The program's version; a test keeps it equal to the build's. */
  public static final String VERSION = "0.1.0";

  /** What {@code --version} prints. */
  static final class Version implements IVersionProvider {
    static final String NUMBER = VERSION;

    @Override
    public String[] getVersion() {
      return new String[] {"rundlauf " + NUMBER};
    }
  }

  /**
   * Runs what {@code args} ask for.
   *
   * @param commands annotated commands, in the order the help lists them
   * @return the exit status
   */
  public static int run(List<?> commands, Console console, String... args) {
    var line = new CommandLine(new Rundlauf());
    withHelp(line);
    commands.forEach(command -> withHelp(addTo(line, command)));
    var mistakes = new Mistakes(console);
    line.setResourceBundle(ResourceBundle.getBundle(BUNDLE, Locale.ROOT))
        .setExpandAtFiles(false)
        .setUsageHelpAutoWidth(false)
        .setUsageHelpWidth(HELP_WIDTH)
        .setOut(console.results())
        .setErr(console.remarks())
        .setParameterExceptionHandler(mistakes::call)
        .setExecutionExceptionHandler(mistakes::execution);
    try {
      return line.execute(args);
    } catch (Error fault) { // memory or stack ran out, or a class is missing
      return mistakes.fault(fault).status();
    }
  }

  private static CommandLine addTo(CommandLine line, Object command) {
    var sub = new CommandLine(command);
    line.addSubcommand(sub);
    return sub;
  }

  private static void withHelp(CommandLine line) {
    line.getCommandSpec()
        .addOption(OptionSpec.builder("-h", "--help").usageHelp(true).build())
        .usageMessage()
        .abbreviateSynopsis(false);
  }
}
