package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Refused;
import rundlauf.usecase.BenchContents;

/** The demo bench, as it lies in the program. */
public final class DemoBenchFiles {
  private static final String ROOT = "/demo/";

  private DemoBenchFiles() {}

  /** The bench's files, by their path within its folder. */
  public static List<String> names() throws IOException {
    return new String(bytes("index.txt"), StandardCharsets.UTF_8).lines().toList();
  }

  /** The bench's files in memory. */
  public static BenchContents contents() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try {
      for (String name : names()) {
        files.put(name, bytes("bench/" + name));
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
      OutFolder.write(folder.resolve(name), bytes("bench/" + name));
    }
  }

  /** Refuses a folder in which something lies, or a file of that name. */
  static void refuseUsed(Path folder) throws IOException {
    String name = folder.toString();
    OutFolder.requireFresh(folder, name, "demo-folder-is-file", "demo-folder-used");
  }

  private static byte[] bytes(String name) throws IOException {
    try (InputStream in = DemoBenchFiles.class.getResourceAsStream(ROOT + name)) {
      if (in == null) {
        throw new UncheckedIOException(new IOException("the program lacks its own " + ROOT + name));
      }
      return in.readAllBytes();
    }
  }
}
