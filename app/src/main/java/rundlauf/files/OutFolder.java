package rundlauf.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Folders that something is written to. */
final class OutFolder {
  private OutFolder() {}

  /**
   * Refuses a folder in which something lies, or a file of that name: nothing of a user's is ever
   * overwritten.
   *
   * @param name as the user named it
   * @param isFile the code of the refusal of a file
   * @param used the code of the refusal of a folder with something in it
   */
  static void requireFresh(Path folder, String name, String isFile, String used)
      throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw Refused.at(Place.of(name), isFile, Arg.typed(name));
    }
    try (Stream<Path> within = Files.list(folder)) {
      if (within.findAny().isPresent()) {
        throw Refused.at(Place.of(name), used, Arg.typed(name));
      }
    }
  }

  /** Writes beside the file first, so that no half of one is ever found under its name. */
  static void write(Path file, byte[] content) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path fresh = file.resolveSibling(file.getFileName() + ".part");
    Files.write(fresh, content);
    Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
  }
}
