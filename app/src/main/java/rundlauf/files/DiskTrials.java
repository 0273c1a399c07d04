package rundlauf.files;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.BenchSource;
import rundlauf.usecase.TrialSource;

/**
 * Trials and benches on the disk. A trial that lies in a bench has that bench's names; the bench
 * read last is kept, so that thousands of its trials do not read it thousands of times.
 */
public final class DiskTrials implements TrialSource, BenchSource {
  private @Nullable Path folder;
  private Optional<Bench> around = Optional.empty();

  @Override
  public Sourced read(String file) {
    Path path = path(file);
    Trial trial = TrialFiles.read(path, file);
    Path own = path.toAbsolutePath().normalize().getParent();
    if (own == null || !own.equals(folder)) {
      around = BenchFiles.around(path);
      folder = own;
    }
    return new Sourced(trial, around);
  }

  @Override
  public Bench bench(String name) {
    return BenchFiles.read(path(name), name);
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException notOne) {
      throw Refused.at(new Place(name, 0, 0, ""), "file-missing", Arg.typed(name));
    }
  }
}
