package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * A folder on a disk.
 *
 * @param root the folder
 * @param name as the user named it; empty for the folder they stand in
 */
record DiskFolder(Path root, String name) implements Folder {
  /** Folders within folders. */
  private static final int DEPTH = 6;

  @Override
  public String shown(String path) {
    return name.isEmpty() ? path : name.endsWith("/") ? name + path : name + "/" + path;
  }

  @Override
  public InputStream open(String path, Place asked) throws IOException {
    Path file = root;
    try {
      for (String part : InnerPath.of(path, asked).split("/", -1)) {
        file = file.resolve(part);
        if (Files.isSymbolicLink(file)) {
          throw Refused.at(asked, "file-is-link", Arg.typed(path));
        }
      }
    } catch (InvalidPathException impossible) {
      throw Refused.at(asked, "file-missing", Arg.typed(path));
    }
    return open(file, path, asked);
  }

  /** Refuses a path of the user's at which nothing is. */
  static void requireThere(Path path, Place asked) {
    if (!Files.exists(path)) {
      throw Refused.at(asked, "nothing-there");
    }
  }

  /** Opens a file, wherever it is. */
  static InputStream open(Path file, String shown, Place asked) throws IOException {
    if (Files.isDirectory(file)) {
      throw Refused.at(asked, "file-is-folder", Arg.typed(shown));
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw Refused.at(asked, "file-not-regular", Arg.typed(shown));
    }
    try {
      return Files.newInputStream(file);
    } catch (NoSuchFileException missing) {
      throw Refused.at(asked, "file-missing", Arg.typed(shown));
    }
  }

  @Override
  public List<String> paths() throws IOException {
    try (Stream<Path> found = Files.walk(root, DEPTH)) {
      List<String> paths =
          found
              .filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
              .limit(Bounds.FILES + 1L)
              .map(p -> root.relativize(p).toString().replace('\\', '/'))
              .sorted()
              .toList();
      if (paths.size() > Bounds.FILES) {
        throw Refused.at(Place.of(name), "files-many", Arg.of(Bounds.FILES));
      }
      return paths;
    }
  }
}
