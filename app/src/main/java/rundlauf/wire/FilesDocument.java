package rundlauf.wire;

import java.util.List;

/** The JSON document of what was published. */
public final class FilesDocument {
  private FilesDocument() {}

  /**
   * The document on one line, without a line end.
   *
   * @param file the bench as the user named it
   * @param out where everything was written
   * @param files of the package
   */
  public static String of(String file, String out, List<String> files) {
    return JsonLine.of(
        saying -> saying.code(),
        json -> {
          json.text("file", file);
          json.text("out", out);
          json.texts("package", files);
        });
  }
}
