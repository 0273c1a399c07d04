package rundlauf.files;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
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
    Path path = TypedFile.path(file);
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
    return BenchFiles.read(TypedFile.path(name), name);
  }
}
