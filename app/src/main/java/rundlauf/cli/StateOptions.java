package rundlauf.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** The options of commands that look at so many joint states of a cut. */
final class StateOptions {
  private static final int FEWEST = 64;

  private static final int MOST = Draws.DEFAULT_COUNT;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command = CommandSpec.create();

  @Option(names = "--seed", paramLabel = "NUMBER")
  private long seed = Draws.DEFAULT_SEED;

  @Option(names = "--draws", paramLabel = "COUNT")
  private int count;

  /** The draws that traits are reduced with. */
  Draws draws() {
    return new Draws(seed, Draws.DEFAULT_COUNT);
  }

  /** How many of them are looked at; {@code usual} where nothing was asked. */
  int states(int usual) {
    if (count != 0 && (count < FEWEST || count > MOST)) {
      CommandLine line = command.commandLine();
      throw new Mistakes.WrongCall(
          line,
          Refused.at(Place.NOWHERE, "usage-states", Mistakes.name(line), Arg.of((long) count)));
    }
    return count == 0 ? usual : count;
  }
}
