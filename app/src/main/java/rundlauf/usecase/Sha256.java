package rundlauf.usecase;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The digest by which a content is known again (FIPS 180-4). */
public final class Sha256 {
  private Sha256() {}

  /** In hexadecimal digits, of these pieces as if they were one. */
  public static String hex(byte[]... pieces) {
    MessageDigest sha = sha256();
    for (byte[] piece : pieces) {
      sha.update(piece);
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
