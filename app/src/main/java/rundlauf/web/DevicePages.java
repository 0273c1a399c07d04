package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.DevicesView;
import rundlauf.render.workbook.Pages;
import rundlauf.usecase.TlsIdentity;

/** Letting other devices in: the page of this machine, and the one that a device sees first. */
final class DevicePages implements Group {
  private static final String PAGE = "/devices";
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());

  private final Frame frame;
  private final Guard guard;
  private final Door door;
  private final String host;
  private final Optional<TlsIdentity> identity;

  /**
   * @param host the address that is listened on
   * @param identity over TLS, what it shows of itself
   */
  DevicePages(Frame frame, Guard guard, Door door, String host, Optional<TlsIdentity> identity) {
    this.frame = frame;
    this.guard = guard;
    this.door = door;
    this.host = host;
    this.identity = identity;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get(PAGE, ctx -> give(ctx, "devices"));
    routes.get(PAGE + "/now", ctx -> give(ctx, "inside"));
    routes.post(PAGE + "/code", this::open);
    routes.post(PAGE + "/{number}/out", this::shutOut);
    routes.get(Guard.LET_IN, this::ask);
    routes.post(Guard.LET_IN, this::letIn);
  }

  private void give(Context ctx, String template) {
    guard.requireHere(ctx);
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.plain(ctx, words.word("devices"), words));
    given.put("view", view(ctx));
    ctx.header("Cache-Control", "no-store").html(Pages.of(template, given));
  }

  private DevicesView view(Context ctx) {
    List<String> addresses = Addresses.outside(ctx.scheme(), host, ctx.req().getLocalPort());
    int by = number(ctx.queryParam("by"));
    String chosen =
        addresses.isEmpty() ? "" : addresses.get(by < addresses.size() ? by : 0) + "let-in";
    Optional<DevicesView.Open> open =
        door.code()
            .filter(code -> !chosen.isEmpty())
            .map(code -> DevicesView.Open.of(code.text(), time(code.ends()), chosen));
    List<DevicesView.Inside> inside =
        door.devices().stream()
            .map(d -> DevicesView.Inside.of(d.number(), d.agent(), time(d.since()), time(d.ends())))
            .toList();
    return new DevicesView(
        !Addresses.isLoopback(host),
        addresses,
        open,
        inside,
        identity.map(TlsIdentity::fingerprint).orElse(""));
  }

  private static int number(@Nullable String text) {
    return text != null && text.matches("\\d{1,3}") ? Integer.parseInt(text) : 0;
  }

  private static String time(Instant instant) {
    return TIME.format(instant);
  }

  private void open(Context ctx) {
    guard.requireHere(ctx);
    door.open();
    ctx.redirect(PAGE, HttpStatus.SEE_OTHER);
  }

  private void shutOut(Context ctx) {
    guard.requireHere(ctx);
    door.shutOut(Frame.number(ctx, "number"));
    ctx.redirect(PAGE, HttpStatus.SEE_OTHER);
  }

  private void ask(Context ctx) {
    if (guard.isIn(ctx)) {
      ctx.redirect("/", HttpStatus.SEE_OTHER);
      return;
    }
    String code = ctx.queryParam("code");
    ask(ctx, code == null ? "" : code, "");
  }

  private void ask(Context ctx, String code, String refusal) {
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.plain(ctx, words.word("let-in"), words));
    given.put("code", code.length() > 40 ? "" : code);
    given.put("refusal", refusal);
    ctx.header("Cache-Control", "no-store").html(Pages.of("letIn", given));
  }

  private void letIn(Context ctx) {
    Forms.take(
        ctx,
        () -> {
          guard.letIn(ctx, Forms.text(ctx, "code"));
          ctx.redirect("/", HttpStatus.SEE_OTHER);
        },
        refused -> ask(ctx, "", Sentences.refusal(refused).said()));
  }
}
