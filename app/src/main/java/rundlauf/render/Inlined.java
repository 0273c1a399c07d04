package rundlauf.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * A script or style sheet that stands in the page itself.
 *
 * @param text as it stands in the page
 */
public record Inlined(String text) {
  private static final String CHARTS = "/META-INF/resources/webjars/echarts/5.5.0/echarts.min.js";

  static Inlined charts() {
    return resource(CHARTS);
  }

  static Inlined drawing() {
    return resource("report.js");
  }

  static Inlined style() {
    return resource("report.css");
  }

  private static Inlined resource(String name) {
    try (InputStream in = Inlined.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("this build lacks " + name);
      }
      return new Inlined(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As a source of a Content-Security-Policy: only this very text may run. */
  String source() {
    try {
      byte[] text = this.text.getBytes(StandardCharsets.UTF_8);
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(text);
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
