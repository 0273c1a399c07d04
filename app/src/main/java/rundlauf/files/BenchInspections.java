package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Trial;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** The inspections of a bench, without its other trials. */
final class BenchInspections {
  private static final String KIND = "inspection";

  private BenchInspections() {}

  /**
   * Every inspection that can be read. One that cannot is passed over here: it is refused where it
   * is asked for itself, and must not keep other trials from being reduced.
   */
  static List<Trial> of(Folder bench, List<String> trials) {
    List<Trial> inspections = new ArrayList<>();
    for (String path : trials) {
      inspection(bench, path).ifPresent(inspections::add);
    }
    return inspections;
  }

  private static Optional<Trial> inspection(Folder bench, String path) {
    try {
      return speaksOfOne(bench, path)
          ? Optional.of(TrialFiles.read(bench, path)).filter(t -> t.kind().strip().equals(KIND))
          : Optional.empty();
    } catch (Refused | IOException | UncheckedIOException unreadable) {
      return Optional.empty();
    }
  }

  /** A quick look, so that thousands of other trials are not parsed. */
  private static boolean speaksOfOne(Folder bench, String path) throws IOException {
    Place asked = Place.of(bench.shown(path));
    try (InputStream in = bench.open(path, asked)) {
      byte[] bytes = TypedFile.bytes(in, bench.shown(path));
      return new String(bytes, StandardCharsets.ISO_8859_1).contains(KIND);
    }
  }
}
