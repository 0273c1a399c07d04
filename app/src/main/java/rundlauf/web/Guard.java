package rundlauf.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
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

  /** What a device that was not let in may ask for: the page that lets it in, and its style. */
  static final String LET_IN = "/let-in";

  private static final String STYLES = "/asset/";
  private static final int LONGEST_NAME = 400;

  private final Sessions sessions;
  private final Door door;
  private final String host;
  private final Predicate<Context> here;

  /**
   * @param host the address that is listened on
   * @param here whether a request comes from this machine itself
   */
  Guard(Sessions sessions, Door door, String host, Predicate<Context> here) {
    this.sessions = sessions;
    this.door = door;
    this.host = host.toLowerCase(Locale.ROOT);
    this.here = here;
  }

  void before(Context ctx) {
    ctx.header("Content-Security-Policy", POLICY);
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("Referrer-Policy", "same-origin");
    requireOurHost(ctx);
    Sessions.Session session =
        Optional.ofNullable(ctx.cookie(COOKIE)).flatMap(sessions::read).orElseGet(() -> open(ctx));
    ctx.attribute(SESSION, session);
    if (!isIn(ctx) && !isForAll(ctx.path())) {
      turnAway(ctx);
      return;
    }
    if (changes(ctx)) {
      requireOurPage(ctx);
      requireToken(ctx, session);
    }
  }

  private static boolean isForAll(String path) {
    return path.equals(LET_IN) || path.startsWith(STYLES);
  }

  /** A page leads to where the device can be let in; anything else is refused. */
  private static void turnAway(Context ctx) {
    boolean page = String.valueOf(ctx.header("Accept")).contains("text/html");
    if (!page || changes(ctx)) {
      throw Refused.at(Place.NOWHERE, "device-not-paired");
    }
    ctx.redirect(LET_IN, HttpStatus.SEE_OTHER);
    ctx.skipRemainingHandlers();
  }

  /** Whether this request may see what is kept: from this machine, or from a device let in. */
  boolean isIn(Context ctx) {
    return stays(ctx).getAsBoolean();
  }

  /** Whether the device of a request is let in still, whenever it is asked. */
  BooleanSupplier stays(Context ctx) {
    Sessions.Session session = ctx.attribute(SESSION);
    boolean fromHere = here.test(ctx);
    return () -> fromHere || (session != null && door.isIn(session));
  }

  /** Whether it comes from this machine itself. */
  boolean isHere(Context ctx) {
    return here.test(ctx);
  }

  /**
   * @throws Refused when the request comes from another machine
   */
  void requireHere(Context ctx) {
    if (!here.test(ctx)) {
      throw Refused.at(Place.NOWHERE, "devices-not-here");
    }
  }

  /**
   * Lets the device of a request in, with a session of its own.
   *
   * @throws Refused when the code is not the one that is good now
   */
  void letIn(Context ctx, String code) {
    Sessions.Session fresh = sessions.open(true);
    String agent = String.valueOf(ctx.userAgent());
    door.letIn(code, fresh, agent.substring(0, Math.min(LONGEST_NAME, agent.length())));
    setCookie(ctx, fresh);
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

  /** Whether a request comes from this machine itself, and is not handed on for another. */
  static boolean fromHere(Context ctx) {
    boolean handedOn = ctx.header("Forwarded") != null || ctx.header("X-Forwarded-For") != null;
    return !handedOn && fromHere(ctx.req().getRemoteAddr(), ctx.req().getLocalAddr());
  }

  /**
   * Whoever speaks to one of our addresses from that same address is on this machine.
   *
   * @param remote the address that it comes from
   * @param local the address that it came to
   */
  static boolean fromHere(String remote, String local) {
    return Addresses.isLoopback(remote) || remote.equals(local);
  }
}
