package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * All that a figure is a function of.
 *
 * @param inputs the trial and the equipment it names, in one agreed order and spelling
 * @param options of the reduction, likewise
 * @param method its name
 * @param version of the method, raised whenever its output moves
 */
public record FigureKey(String inputs, String options, long seed, String method, String version) {
  /** SHA-256 over the parts, each after its length, so that no two keys run together. */
  public String digest() {
    MessageDigest sha = sha256();
    for (String part : List.of(inputs, options, Long.toString(seed), method, version)) {
      byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
      sha.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
      sha.update(bytes);
    }
    return HexFormat.of().formatHex(sha.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
