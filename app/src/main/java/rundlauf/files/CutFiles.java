package rundlauf.files;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import rundlauf.bench.Bench;
import rundlauf.bench.Cut;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Reads cut files, and the benches whose setups they name. */
public final class CutFiles {
  private CutFiles() {}

  /**
   * A cut as typed.
   *
   * @param path the cut's file
   * @param name as the user named it; every sentence names it so
   * @throws Refused for whatever cannot be read one way only
   */
  public static Cut read(Path path, String name) {
    return parse(Utf8.text(TypedFile.bytes(path, name, "cut-is-folder"), name), name);
  }

  /**
   * A cut that stands in no file yet.
   *
   * @param text the document
   * @param name what to call it in sentences
   */
  public static Cut parse(String text, String name) {
    YamlDocument document = YamlDocument.read(text, name);
    document.refuse("trial", "cut-is-trial");
    document.refuse("bench", "cut-is-bench");
    document.refuse("feature", "cut-is-job");
    return Cut.of(name, document.fields());
  }

  /**
   * Where the bench of a cut's setup lies.
   *
   * @param folder as typed; reached from the folder of the cut's file
   * @param cut the cut's file
   * @param place where it was typed
   * @throws Refused when nothing lies there
   */
  static Path bench(String folder, Path cut, Place place) {
    try {
      Path bench = cut.resolveSibling(folder).normalize();
      if (!bench.toString().isEmpty() && !Files.exists(bench)) {
        throw Refused.at(place, "cut-bench-missing", Arg.typed(folder));
      }
      return bench;
    } catch (InvalidPathException notOne) {
      throw Refused.at(place, "cut-bench-missing", Arg.typed(folder));
    }
  }

  /** As {@link #bench}, read. */
  static Bench bench(Path bench) {
    return BenchFiles.read(bench, bench.toString().isEmpty() ? "." : bench.toString());
  }
}
