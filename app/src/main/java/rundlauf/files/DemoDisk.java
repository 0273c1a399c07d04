package rundlauf.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.DemoFolder;

/** Lays the demo bench out on the disk, as {@code bench} in a folder that was new or empty. */
public final class DemoDisk implements DemoFolder {
  @Override
  public Laid lay(Optional<String> asked) {
    String name = asked.orElse("rundlauf-demo");
    try {
      Path folder = asked.isPresent() ? Path.of(name) : Files.createTempDirectory("rundlauf-demo-");
      DemoBenchFiles.refuseUsed(folder);
      Path bench = folder.resolve("bench");
      DemoBenchFiles.unpack(bench);
      return new Laid(folder.toString(), bench.toString());
    } catch (IOException | UncheckedIOException | InvalidPathException broken) {
      throw Refused.at(
          Place.of(name),
          "demo-folder-not-made",
          Arg.typed(name),
          Arg.typed(String.valueOf(broken.getMessage())));
    }
  }
}
