package rundlauf.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rundlauf.render.Wording;
import rundlauf.usecase.StoredBench;

/** Where the links of a bench's report lead in the workbook. */
final class BenchLinks {
  private static final Pattern OF_TRIAL =
      Pattern.compile("(trial|readings|chart|figure)-(\\d+)(-.*)?");

  private final int bench;
  private final List<String> files;
  private final List<String> stored;

  /**
   * @param bench its number
   * @param files of the report's trials, in its order
   * @param stored the names of the bench's trials, in the order of the store
   */
  BenchLinks(int bench, List<String> files, List<String> stored) {
    this.bench = bench;
    this.files = List.copyOf(files);
    this.stored = stored.stream().map(StoredBench::path).toList();
  }

  /** The address of a bench. */
  static String base(int bench) {
    return "/bench/" + bench;
  }

  /** The address at which a trial of a setup is begun. */
  static String measure(int bench, String setup) {
    return base(bench) + "/trial/new?setup=" + encoded(setup);
  }

  Wording words() {
    return new Wording(this::address);
  }

  private String address(String id) {
    if (id.startsWith("method-")) {
      return "/method/" + id.substring("method-".length());
    }
    Matcher of = OF_TRIAL.matcher(id);
    if (of.matches()) {
      return trial(
          of.group(1), Integer.parseInt(of.group(2)), of.group(3) == null ? "" : of.group(3));
    }
    String base = base(bench);
    if (id.startsWith("job-")) {
      return base + "/jobs#" + id;
    }
    return id.startsWith("setup-") ? base + "#" + id : "#" + id;
  }

  private String trial(String what, int number, String rest) {
    int at = stored.indexOf(files.get(number - 1)) + 1;
    String base = TrialLinks.base(bench, at);
    return switch (what) {
      case "figure" -> base + "/figure?path=" + encoded(rest.substring(1));
      case "readings" -> base + "#readings-1" + rest;
      case "chart" -> base + "#chart-1" + rest;
      default -> base;
    };
  }

  static String encoded(String path) {
    return URLEncoder.encode(path, StandardCharsets.UTF_8);
  }
}
