package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.zip.ZipException;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Reads benches: a folder, or an archive of one, with {@code bench.yaml} and {@code trials/}. */
public final class BenchFiles {
  private static final String DOCUMENT = "bench.yaml";
  private static final String TRIALS = "trials/";

  /** How far above a trial its bench is looked for: {@code trials/}, and one folder in it. */
  private static final int ABOVE = 3;

  private BenchFiles() {}

  /**
   * A bench with its trials.
   *
   * @param path a folder or a ZIP archive
   * @param name as the user named it
   * @throws Refused for whatever is not as it should be in the bench or in the typing of a trial
   */
  public static Bench read(Path path, String name) {
    return within(path, name, BenchFiles::read);
  }

  /** What is made of the files of a bench while they are open. */
  interface Reading<T> {
    T of(Folder folder) throws IOException;
  }

  /**
   * What is made of a bench's files.
   *
   * @param path a folder or a ZIP archive
   * @param name as the user named it
   */
  static <T> T within(Path path, String name, Reading<T> reading) {
    Place asked = Place.of(name);
    DiskFolder.requireThere(path, asked);
    try {
      if (Files.isDirectory(path)) {
        return reading.of(new DiskFolder(path, name));
      }
      DiskFolder.open(path, name, asked).close(); // refuses what is no file, by its own sentence
      try (ZipFolder zip = ZipFolder.open(path, name)) {
        return reading.of(top(zip));
      }
    } catch (ZipException broken) {
      throw Refused.at(asked, "archive-not-read", Arg.typed(String.valueOf(broken.getMessage())));
    } catch (IOException | UncheckedIOException broken) {
      throw TypedFile.notRead(asked, broken);
    }
  }

  /** As {@link #read(Path, String)}, named as the path is written. */
  public static Bench read(Path path) {
    return read(path, path.toString());
  }

  /**
   * The bench that a trial's file lies in, of its trials the inspections alone (they hold a spindle
   * for every trial); empty when it lies in none.
   *
   * @param trial the trial's file
   * @throws Refused for whatever is not as it should be in the bench
   */
  public static Optional<Bench> around(Path trial) {
    Path folder = trial.toAbsolutePath().normalize().getParent();
    for (int i = 0; i < ABOVE && folder != null; i++) {
      Path above = folder.getParent();
      boolean trials = folder.endsWith("trials");
      if (trials && above != null && Files.isRegularFile(above.resolve(DOCUMENT))) {
        DiskFolder bench = new DiskFolder(above, shown(above));
        return Optional.of(read(bench, paths -> BenchInspections.of(bench, paths)));
      }
      folder = above;
    }
    return Optional.empty();
  }

  /** A folder as it is reached from where the user stands, when that is the shorter way. */
  private static String shown(Path folder) {
    Path here = Path.of("").toAbsolutePath();
    return folder.startsWith(here) ? here.relativize(folder).toString() : folder.toString();
  }

  /** An archive may hold the bench's files, or one folder with them. */
  private static Folder top(ZipFolder zip) {
    if (zip.paths().contains(DOCUMENT)) {
      return zip;
    }
    List<String> inner =
        zip.paths().stream()
            .filter(p -> p.endsWith("/" + DOCUMENT) && p.indexOf('/') == p.lastIndexOf('/'))
            .toList();
    return inner.size() == 1 ? zip.under(inner.get(0).replace("/" + DOCUMENT, "")) : zip;
  }

  static Bench read(Folder folder) {
    return read(folder, paths -> paths.stream().map(p -> TrialFiles.read(folder, p)).toList());
  }

  private static Bench read(Folder folder, Function<List<String>, List<Trial>> reading) {
    Entry.Fields document = document(folder);
    List<String> paths =
        paths(folder).stream().filter(p -> p.startsWith(TRIALS) && p.endsWith(".yaml")).toList();
    return BenchReader.read(folder.shown(DOCUMENT), document, reading.apply(paths));
  }

  private static List<String> paths(Folder folder) {
    try {
      return folder.paths();
    } catch (IOException | UncheckedIOException broken) {
      throw TypedFile.notRead(Place.of(folder.shown(DOCUMENT)), broken);
    }
  }

  private static Entry.Fields document(Folder folder) {
    String shown = folder.shown(DOCUMENT);
    Place asked = Place.of(shown);
    try (InputStream in = folder.open(DOCUMENT, asked)) {
      return YamlDocument.read(Utf8.text(TypedFile.bytes(in, shown), shown), shown).fields();
    } catch (Refused refused) {
      boolean missing = refused.saying().code().equals("file-missing");
      throw missing ? Refused.at(asked, "bench-missing") : refused;
    } catch (IOException | UncheckedIOException broken) {
      throw TypedFile.notRead(asked, broken);
    }
  }
}
