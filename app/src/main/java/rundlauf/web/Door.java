package rundlauf.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Which devices from outside this machine were let in, and the code that lets the next one in. */
final class Door {
  /** How long a code is good. Our choice: time to walk over with a phone. */
  static final Duration CODE_LASTS = Duration.ofMinutes(5);

  /** Wrong tries that end a code. Our choice; of 24^8 codes nobody guesses one in five tries. */
  static final int TRIES = 5;

  /** No two of them look alike, nor like what was left out: 0 O, 1 I L, 2 Z, 5 S, 8 B, U V. */
  static final String LETTERS = "34679ACDEFGHJKMNPQRTVWXY";

  static final int LENGTH = 8;

  private final InstantSource clock;
  private final SecureRandom random = new SecureRandom();
  private final Map<String, Device> inside = new LinkedHashMap<>();
  private @Nullable Code code;
  private int wrong;
  private int last;

  Door(InstantSource clock) {
    this.clock = clock;
  }

  /** A code that lets one device in. */
  record Code(String text, Instant ends) {}

  /**
   * A device that was let in.
   *
   * @param number what it is called by on this machine's own page
   * @param agent what its browser says it is
   */
  record Device(int number, String agent, Instant since, Instant ends) {}

  /** Makes a new code; the one before is void. */
  synchronized Code open() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < LENGTH; i++) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    Code fresh = new Code(text.toString(), clock.instant().plus(CODE_LASTS));
    code = fresh;
    wrong = 0;
    return fresh;
  }

  /** The code that is good now; empty when it was used, guessed at too often, or is too old. */
  synchronized Optional<Code> code() {
    if (code != null && !clock.instant().isBefore(code.ends())) {
      code = null;
    }
    return Optional.ofNullable(code);
  }

  /**
   * Lets a device in, and ends the code.
   *
   * @param typed the code; blanks in it and small letters do not matter
   * @param session that the device has from now on
   * @throws Refused when it is not the code, or none is good
   */
  synchronized void letIn(String typed, Sessions.Session session, String agent) {
    Code good = code().orElseThrow(() -> Refused.at(Place.NOWHERE, "code-none"));
    String bare = typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    if (!MessageDigest.isEqual(
        bare.getBytes(StandardCharsets.UTF_8), good.text().getBytes(StandardCharsets.UTF_8))) {
      wrong++;
      if (wrong >= TRIES) {
        code = null;
      }
      throw Refused.at(Place.NOWHERE, "code-wrong");
    }
    code = null;
    last++;
    inside.put(session.id(), new Device(last, agent, clock.instant(), session.ends()));
  }

  /** Whether the device of a session is let in still. */
  synchronized boolean isIn(Sessions.Session session) {
    return session.paired() && inside.containsKey(session.id());
  }

  /** Those that are let in, the first one first. */
  synchronized List<Device> devices() {
    inside.values().removeIf(device -> device.ends().isBefore(clock.instant()));
    return new ArrayList<>(inside.values());
  }

  /** From now on this device is not let in. */
  synchronized void shutOut(int number) {
    inside.values().removeIf(device -> device.number() == number);
  }
}
