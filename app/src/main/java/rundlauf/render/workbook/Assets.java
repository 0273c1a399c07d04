package rundlauf.render.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/** Scripts and style sheets of the workbook; all of them lie in the program. */
public final class Assets {
  private static final String JARS = "/META-INF/resources/webjars/";
  private static final Map<String, String> PATHS = paths();
  private static final Map<String, Asset> LOADED = new LinkedHashMap<>();

  private Assets() {}

  /** One of them; its bytes are not to be changed. */
  public record Asset(String type, byte[] bytes, String version) {}

  private static Map<String, String> paths() {
    Map<String, String> paths = new LinkedHashMap<>();
    paths.put("echarts.js", JARS + "echarts/5.5.0/echarts.min.js");
    paths.put("htmx.js", JARS + "htmx.org/2.0.10/dist/htmx.min.js");
    paths.put("report.css", "/rundlauf/render/report.css");
    paths.put("report.js", "/rundlauf/render/report.js");
    for (String own : new String[] {"workbook.css", "workbook.js", "sheet.js", "queue.js"}) {
      paths.put(own, "/rundlauf/web/" + own);
    }
    return paths;
  }

  /** The asset of a name; empty when there is none. */
  public static Optional<Asset> find(String name) {
    String path = PATHS.get(name);
    if (path == null) {
      return Optional.empty();
    }
    synchronized (LOADED) {
      return Optional.of(LOADED.computeIfAbsent(name, n -> load(n, path)));
    }
  }

  static String address(String name) {
    Asset asset =
        find(name).orElseThrow(() -> new IllegalArgumentException("no script or style " + name));
    return "/asset/" + name + "?v=" + asset.version();
  }

  private static Asset load(String name, String path) {
    try (InputStream in = Assets.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("this build lacks " + path);
      }
      byte[] bytes = in.readAllBytes();
      CRC32 sum = new CRC32();
      sum.update(bytes);
      String type = name.endsWith(".css") ? "text/css" : "text/javascript";
      return new Asset(type, bytes, Long.toHexString(sum.getValue()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
