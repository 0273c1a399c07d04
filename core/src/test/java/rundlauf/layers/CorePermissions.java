package rundlauf.layers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Which packages of ours each core package may see: the route, as a table. A package and those
 * under it share a row. Why safety, compare and character see readings: docs/decisions/0002.
 */
final class CorePermissions {
  /** Exactly these, not what lies under them: no java.io, java.nio, java.net, java.sql. */
  private static final List<String> PLAIN_JAVA =
      List.of(
          "java.lang",
          "java.lang.invoke",
          "java.lang.runtime",
          "java.util",
          "java.util.function",
          "java.util.stream",
          "java.util.regex",
          "java.math",
          "java.time",
          "org.jspecify.annotations");

  private static final List<String> NUMERIC_LIBRARIES =
      List.of(
          "org.hipparchus..",
          "org.apache.commons.rng..",
          "org.jtransforms..",
          "pl.edu.icm.jlargearrays..");

  static final Map<String, List<String>> MAY_SEE = table();

  private CorePermissions() {}

  private static Map<String, List<String>> table() {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    rows.put("maths", List.of());
    rows.put("quantity", List.of("maths"));
    rows.put("bench", List.of("maths", "quantity"));
    rows.put("readings", List.of("maths", "quantity", "bench"));
    rows.put("reduce", List.of("maths", "quantity", "bench", "readings"));
    rows.put("safety", List.of("maths", "quantity", "bench", "readings", "reduce"));
    rows.put("compare", List.of("maths", "quantity", "bench", "readings", "reduce"));
    rows.put("character", List.of("maths", "quantity", "bench", "readings", "reduce", "safety"));
    rows.put("cutting", List.of("maths", "quantity", "bench", "character"));
    rows.put("planning", List.of("maths", "quantity", "bench", "safety", "character", "cutting"));
    rows.put("proof", List.of("maths", "quantity", "bench", "character", "cutting", "planning"));
    rows.put("program", List.of("maths", "quantity", "bench", "character", "cutting", "planning"));
    rows.put("watch", List.of("maths", "quantity", "bench", "reduce"));
    rows.put("guide", List.of("maths", "quantity", "bench", "readings", "reduce", "safety"));
    TreeSet<String> all = new TreeSet<>(rows.keySet());
    rows.put("report", List.copyOf(all));
    return rows;
  }

  /** Package patterns a row may depend on: itself, its row, plain Java and, for maths, numbers. */
  static String[] allowed(String row) {
    List<String> packages = new ArrayList<>(PLAIN_JAVA);
    packages.add("rundlauf." + row + "..");
    for (String other : MAY_SEE.get(row)) {
      packages.add("rundlauf." + other + "..");
    }
    if (row.equals("maths")) {
      packages.addAll(NUMERIC_LIBRARIES);
    }
    return packages.toArray(String[]::new);
  }
}
