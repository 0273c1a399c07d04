package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Files that a user typed, each read whole. */
final class TypedFile {
  private TypedFile() {}

  /** Where a file lies; refuses a name that can be none. */
  static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException notOne) {
      throw Refused.at(Place.of(name), "file-missing", Arg.typed(name));
    }
  }

  /**
   * The whole of a YAML file that was asked for by itself.
   *
   * @param name as the user named it; every sentence names it so
   * @param isFolder the code of the refusal of a folder
   */
  static byte[] bytes(Path path, String name, String isFolder) {
    Place asked = Place.of(name);
    DiskFolder.requireThere(path, asked);
    if (Files.isDirectory(path)) {
      throw Refused.at(asked, isFolder);
    }
    try (InputStream in = DiskFolder.open(path, name, asked)) {
      return bytes(in, name);
    } catch (IOException | UncheckedIOException broken) {
      throw notRead(asked, broken);
    }
  }

  /** The whole of a YAML file. */
  static byte[] bytes(InputStream in, String name) throws IOException {
    byte[] bytes = in.readNBytes((int) Bounds.YAML_BYTES + 1);
    if (bytes.length > Bounds.YAML_BYTES) {
      throw Refused.at(Place.of(name), "file-too-large", Arg.of(Bounds.YAML_BYTES));
    }
    return bytes;
  }

  static Refused notRead(Place asked, Exception broken) {
    return Refused.at(asked, "file-not-read", Arg.typed(String.valueOf(broken.getMessage())));
  }
}
