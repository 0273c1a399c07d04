package rundlauf.files;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import rundlauf.bench.Job;
import rundlauf.usecase.JobSource;

/** Jobs on the disk. */
public final class DiskJobs implements JobSource {
  @Override
  public Optional<Job> job(String file) {
    try {
      Path path = Path.of(file);
      return Files.exists(path) ? Optional.of(JobFiles.read(path, file)) : Optional.empty();
    } catch (InvalidPathException notOne) {
      return Optional.empty(); // a job's name need not be a path
    }
  }
}
