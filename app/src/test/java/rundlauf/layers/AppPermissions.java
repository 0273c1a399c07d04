package rundlauf.layers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which packages of the app each of its packages may see, besides itself and all of core: the
 * second half of the table whose first half is in core's tests.
 */
final class AppPermissions {
  static final Map<String, List<String>> MAY_SEE = table();

  /** Edges: they touch the world, and only Main makes them. */
  static final List<String> EDGES = List.of("store", "devices", "files");

  static final List<String> FACES = List.of("cli", "web");

  /** Libraries that belong to one place each. */
  static final Map<String, List<String>> HOME_OF = homes();

  private AppPermissions() {}

  private static Map<String, List<String>> table() {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    rows.put("usecase", List.of());
    rows.put("wire", List.of());
    rows.put("render", List.of());
    rows.put("files", List.of("usecase", "wire"));
    rows.put("store", List.of("usecase", "wire"));
    rows.put("devices", List.of("usecase", "wire"));
    rows.put("cli", List.of("usecase", "wire", "render"));
    rows.put("web", List.of("usecase", "wire", "render"));
    return rows;
  }

  private static Map<String, List<String>> homes() {
    Map<String, List<String>> homes = new LinkedHashMap<>();
    homes.put("picocli..", List.of("rundlauf", "rundlauf.cli.."));
    homes.put("com.fasterxml.jackson..", List.of("rundlauf.wire..", "rundlauf.render.."));
    homes.put("org.snakeyaml..", List.of("rundlauf.files.."));
    homes.put("de.siegmar.fastcsv..", List.of("rundlauf.files.."));
    homes.put("io.javalin..", List.of("rundlauf.web.."));
    homes.put("org.eclipse.jetty..", List.of("rundlauf.web.."));
    homes.put("jakarta.servlet..", List.of("rundlauf.web.."));
    homes.put("org.commonmark..", List.of("rundlauf.render.."));
    homes.put("com.google.zxing..", List.of("rundlauf.render.."));
    homes.put("java.net..", List.of("rundlauf", "rundlauf.web..", "rundlauf.devices.."));
    for (String library :
        List.of(
            "java.sql..",
            "javax.sql..",
            "org.jdbi..",
            "org.flywaydb..",
            "com.zaxxer..",
            "org.sqlite..",
            "org.postgresql..")) {
      homes.put(library, List.of("rundlauf.store.."));
    }
    return homes;
  }
}
