package rundlauf.usecase;

import java.util.Optional;
import rundlauf.bench.Job;

/** Where jobs that stand in a file of their own are read from. */
public interface JobSource {
  /**
   * A job as it was typed; empty when there is no such file.
   *
   * @param file as the user named it
   * @throws rundlauf.quantity.Refused when it cannot be read
   */
  Optional<Job> job(String file);
}
