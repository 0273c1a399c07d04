package rundlauf.web;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Who has opened the workbook: a signed word in a cookie, and the token that every change must
 * carry. Nothing is kept here; a start of the program makes all of them void.
 */
final class Sessions {
  /** How long a session lasts. Our choice: a day at the machine. */
  static final Duration LASTS = Duration.ofHours(14);

  private static final String MAC = "HmacSHA256";
  private static final int RANDOM_BYTES = 18;

  private final SecretKeySpec key;
  private final SecureRandom random = new SecureRandom();
  private final InstantSource clock;

  Sessions(InstantSource clock) {
    byte[] secret = new byte[32];
    random.nextBytes(secret);
    this.key = new SecretKeySpec(secret, MAC);
    this.clock = clock;
  }

  /**
   * A session.
   *
   * @param word what stands in the cookie
   * @param id tells it from all others
   * @param ends when it does
   * @param paired whether its device was let in from outside this machine
   */
  record Session(String word, String id, Instant ends, boolean paired) {}

  /** A fresh one. */
  Session open(boolean paired) {
    byte[] id = new byte[RANDOM_BYTES];
    random.nextBytes(id);
    long ends = clock.instant().plus(LASTS).getEpochSecond();
    String name = HexFormat.of().formatHex(id);
    String said = name + "." + ends + "." + (paired ? "p" : "l");
    String word = said + "." + sign("session " + said);
    return new Session(word, name, Instant.ofEpochSecond(ends), paired);
  }

  /** The session of a cookie; empty when it is not one of ours or has ended. */
  Optional<Session> read(String word) {
    String[] parts = word.split("\\.", -1);
    if (parts.length != 4) {
      return Optional.empty();
    }
    String said = parts[0] + "." + parts[1] + "." + parts[2];
    if (!same(sign("session " + said), parts[3])) {
      return Optional.empty();
    }
    Instant ends = Instant.ofEpochSecond(Long.parseLong(parts[1]));
    return ends.isBefore(clock.instant())
        ? Optional.empty()
        : Optional.of(new Session(word, parts[0], ends, parts[2].equals("p")));
  }

  /** What a change made in this session must carry. */
  String token(Session session) {
    return sign("token " + session.word());
  }

  boolean isToken(Session session, String given) {
    return same(token(session), given);
  }

  private static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }

  private String sign(String text) {
    try {
      Mac mac = Mac.getInstance(MAC);
      mac.init(key);
      return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has " + MAC, e);
    }
  }
}
