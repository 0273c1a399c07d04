package rundlauf.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * Lets a request in: it must be meant for this workbook, come from a device that may, and, where it
 * changes something, carry the token of its session from one of our own pages.
 */
final class Guard {
  static final String TOKEN_HEADER = "Rundlauf-Token";
  static final String TOKEN_FIELD = "token";
  private static final String COOKIE = "rundlauf";
  private static final String SESSION = "session";
  private static final List<String> LOOPBACK = List.of("localhost", "127.0.0.1", "[::1]");

  /** What every answer says: nothing but what is ours runs, is loaded or may frame it. */
  static final String POLICY =
      "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
          + " object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

  private final Sessions sessions;
  private final String host;

  /**
   * @param host the address that is listened on
   */
  Guard(Sessions sessions, String host) {
    this.sessions = sessions;
    this.host = host;
  }

  void before(Context ctx) {
    ctx.header("Content-Security-Policy", POLICY);
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("Referrer-Policy", "same-origin");
    requireOurHost(ctx);
    Sessions.Session session =
        Optional.ofNullable(ctx.cookie(COOKIE)).flatMap(sessions::read).orElseGet(() -> open(ctx));
    ctx.attribute(SESSION, session);
    if (!isHere(ctx.ip()) && !session.paired()) {
      throw Refused.at(Place.NOWHERE, "device-not-paired");
    }
    if (changes(ctx)) {
      requireOurPage(ctx);
      requireToken(ctx, session);
    }
  }

  private Sessions.Session open(Context ctx) {
    Sessions.Session fresh = sessions.open(false);
    setCookie(ctx, fresh);
    return fresh;
  }

  static void setCookie(Context ctx, Sessions.Session session) {
    int age = (int) Sessions.LASTS.toSeconds();
    boolean secure = ctx.scheme().equals("https");
    ctx.cookie(new Cookie(COOKIE, session.word(), "/", age, secure, true, null, SameSite.STRICT));
  }

  /** The token for forms and scripts of a page. */
  String token(Context ctx) {
    Sessions.Session session = ctx.attribute(SESSION);
    return session == null ? "" : sessions.token(session);
  }

  /** Another name than ours in the request would let a foreign page speak to us. */
  private void requireOurHost(Context ctx) {
    String named = String.valueOf(ctx.host()).toLowerCase(Locale.ROOT);
    String bare = named.replaceFirst(":\\d+$", "");
    boolean ours = LOOPBACK.contains(bare) || bare.equals(host) || isAnAddress(bare);
    if (!ours) {
      throw Refused.at(Place.NOWHERE, "host-not-ours");
    }
  }

  /** A plain address is no name that someone else could let lead here. */
  private static boolean isAnAddress(String bare) {
    return bare.matches("\\d{1,3}(\\.\\d{1,3}){3}") || bare.matches("\\[[0-9a-f:.]+]");
  }

  private static boolean changes(Context ctx) {
    return ctx.method() != HandlerType.GET && ctx.method() != HandlerType.HEAD;
  }

  private static void requireOurPage(Context ctx) {
    String origin = ctx.header("Origin");
    String site = ctx.header("Sec-Fetch-Site");
    boolean ours = origin == null || origin.equals(ctx.scheme() + "://" + ctx.host());
    if (!ours || (site != null && !site.equals("same-origin"))) {
      throw Refused.at(Place.NOWHERE, "page-not-ours");
    }
  }

  private void requireToken(Context ctx, Sessions.Session session) {
    @Nullable String given = ctx.header(TOKEN_HEADER);
    if (given == null) {
      given = ctx.formParam(TOKEN_FIELD);
    }
    if (given == null || !sessions.isToken(session, given)) {
      throw Refused.at(Place.NOWHERE, "token-stale");
    }
  }

  /** Whether an address is this machine's own. */
  static boolean isHere(String ip) {
    try {
      return InetAddress.getByName(ip.replaceAll("[\\[\\]]", "")).isLoopbackAddress();
    } catch (UnknownHostException unreadable) {
      return false;
    }
  }
}
