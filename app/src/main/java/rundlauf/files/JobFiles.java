package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import rundlauf.bench.Entry;
import rundlauf.bench.Job;
import rundlauf.quantity.Place;
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
    Place asked = new Place(name, 0, 0, "");
    DiskFolder.requireThere(path, asked);
    if (Files.isDirectory(path)) {
      throw Refused.at(asked, "job-is-folder");
    }
    try (InputStream in = DiskFolder.open(path, name, asked)) {
      return parse(Utf8.text(TrialFiles.bytes(in, name), name), name);
    } catch (IOException | UncheckedIOException broken) {
      throw TrialFiles.notRead(asked, broken);
    }
  }

  private static Job parse(String text, String name) {
    Entry.Fields document = YamlDocument.read(text, name).fields();
    refuse(document, "trial", "job-is-trial");
    refuse(document, "bench", "job-is-bench");
    refuse(document, "operation", "job-is-cut");
    return Job.of(name, document);
  }

  private static void refuse(Entry.Fields document, String field, String code) {
    if (document.get(field).isPresent()) {
      Place place = document.keyPlaces().getOrDefault(field, document.place());
      throw Refused.at(place.field(field), code);
    }
  }
}
