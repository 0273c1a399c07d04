package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.BenchContents;

/** The demo bench, as it lies in the program. */
public final class DemoBenchFiles {
  private static final String ROOT = "/demo/";

  private DemoBenchFiles() {}

  /** The bench's files, by their path within its folder. */
  public static List<String> names() throws IOException {
    try (InputStream in = open("index.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  /** The bench's files in memory. */
  public static BenchContents contents() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try {
      for (String name : names()) {
        try (InputStream in = open("bench/" + name)) {
          files.put(name, in.readAllBytes());
        }
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return BenchContents.of(files);
  }

  /**
   * Writes the demo bench into a folder, made when it is not there.
   *
   * @param folder not there yet, or empty
   * @throws Refused when something already lies in it: nothing of a user's is ever overwritten
   */
  public static void unpack(Path folder) throws IOException {
    refuseUsed(folder);
    for (String name : names()) {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      try (InputStream in = open("bench/" + name)) {
        Files.copy(in, file);
      }
    }
  }

  /** Refuses a folder in which something lies, or a file of that name. */
  public static void refuseUsed(Path folder) throws IOException {
    Place place = new Place(folder.toString(), 0, 0, "");
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw Refused.at(place, "demo-folder-is-file", Arg.typed(folder.toString()));
    }
    if (Files.isDirectory(folder)) {
      try (Stream<Path> within = Files.list(folder)) {
        if (within.findAny().isPresent()) {
          throw Refused.at(place, "demo-folder-used", Arg.typed(folder.toString()));
        }
      }
    }
  }

  private static InputStream open(String name) {
    InputStream in = DemoBenchFiles.class.getResourceAsStream(ROOT + name);
    if (in == null) {
      throw new UncheckedIOException(new IOException("the program lacks its own " + ROOT + name));
    }
    return in;
  }
}
