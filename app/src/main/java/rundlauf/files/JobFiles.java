package rundlauf.files;

import java.nio.file.Path;
import rundlauf.bench.Job;
import rundlauf.quantity.Refused;

/** Reads job files. */
public final class JobFiles {
  private JobFiles() {}

  /**
   * A job as typed.
   *
   * @param path the job's file
   * @param name as the user named it; every sentence names it so
   * @throws Refused for whatever cannot be read one way only
   */
  public static Job read(Path path, String name) {
    return parse(Utf8.text(TypedFile.bytes(path, name, "job-is-folder"), name), name);
  }

  private static Job parse(String text, String name) {
    YamlDocument document = YamlDocument.read(text, name);
    document.refuse("trial", "job-is-trial");
    document.refuse("bench", "job-is-bench");
    document.refuse("operation", "job-is-cut");
    return Job.of(name, document.fields());
  }
}
