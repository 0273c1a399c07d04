package rundlauf.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The Markdown pages of the repository. */
final class Pages {
  /** Surefire starts in the module's folder. */
  static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  private static final Set<String> NOT_OURS = Set.of("target", ".git", ".rundlauf", ".idea");

  private Pages() {}

  static List<Path> all() {
    return filesUnder(ROOT, ".md");
  }

  static List<Path> filesUnder(Path folder, String ending) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(ending))
          .filter(
              file ->
                  Stream.of(ROOT.relativize(file))
                      .flatMap(Pages::names)
                      .noneMatch(NOT_OURS::contains))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<String> names(Path path) {
    return Stream.iterate(0, i -> i < path.getNameCount(), i -> i + 1)
        .map(i -> path.getName(i).toString());
  }
}
