package rundlauf.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** The options of every command that draws. */
final class DrawOptions {
  /** What {@link Draws} takes. */
  private static final int FEWEST = 200;

  private static final int MOST = 1_000_000;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command = CommandSpec.create();

  @Option(names = "--seed", paramLabel = "NUMBER")
  private long seed = Draws.DEFAULT_SEED;

  @Option(names = "--draws", paramLabel = "COUNT")
  private int count = Draws.DEFAULT_COUNT;

  Draws draws() {
    if (count < FEWEST || count > MOST) {
      CommandLine line = command.commandLine();
      throw new Mistakes.WrongCall(
          line,
          Refused.at(Place.NOWHERE, "usage-draws", Mistakes.name(line), Arg.of((long) count)));
    }
    return new Draws(seed, count);
  }
}
