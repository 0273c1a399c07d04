package rundlauf.files;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.Bench;
import rundlauf.bench.Cut;
import rundlauf.bench.Entry;
import rundlauf.quantity.Place;
import rundlauf.usecase.CutSource;

/**
 * Cuts on the disk. The bench read last is kept, so that many cuts on its setups do not read it
 * many times.
 */
public final class DiskCuts implements CutSource {
  private @Nullable Path folder;
  private @Nullable Bench bench;

  @Override
  public Sourced read(String file) {
    Path path = TypedFile.path(file);
    Cut cut = CutFiles.read(path, file);
    return cut.setup() instanceof Cut.SetupNamed named
        ? new Sourced(cut, Optional.of(bench(cut, named, path)))
        : new Sourced(cut, Optional.empty());
  }

  private Bench bench(Cut cut, Cut.SetupNamed named, Path path) {
    Path asked = CutFiles.bench(named.bench(), path, place(cut));
    Bench known = bench;
    if (known == null || !asked.equals(folder)) {
      known = CutFiles.bench(asked);
      bench = known;
      folder = asked;
    }
    return known;
  }

  /** Where the bench's folder was typed. */
  private static Place place(Cut cut) {
    return cut.document().get("setup").orElseThrow() instanceof Entry.Fields setup
        ? setup.get("bench").orElse(setup).place()
        : cut.place("setup");
  }
}
