package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import rundlauf.bench.Bench;
import rundlauf.bench.Cut;
import rundlauf.bench.Entry;
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
    Place asked = new Place(name, 0, 0, "");
    DiskFolder.requireThere(path, asked);
    if (Files.isDirectory(path)) {
      throw Refused.at(asked, "cut-is-folder");
    }
    try (InputStream in = DiskFolder.open(path, name, asked)) {
      return parse(Utf8.text(TrialFiles.bytes(in, name), name), name);
    } catch (IOException | UncheckedIOException broken) {
      throw TrialFiles.notRead(asked, broken);
    }
  }

  /**
   * A cut that stands in no file yet.
   *
   * @param text the document
   * @param name what to call it in sentences
   */
  public static Cut parse(String text, String name) {
    Entry.Fields document = YamlDocument.read(text, name).fields();
    refuse(document, "trial", "cut-is-trial");
    refuse(document, "bench", "cut-is-bench");
    refuse(document, "feature", "cut-is-job");
    return Cut.of(name, document);
  }

  private static void refuse(Entry.Fields document, String field, String code) {
    if (document.get(field).isPresent()) {
      Place place = document.keyPlaces().getOrDefault(field, document.place());
      throw Refused.at(place.field(field), code);
    }
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
