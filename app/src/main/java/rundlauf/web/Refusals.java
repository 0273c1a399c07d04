package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Pages;
import rundlauf.render.workbook.Shell;
import rundlauf.wire.RefusalDocument;

/** What is answered when something is refused, is not there, or is our fault: a sentence. */
final class Refusals {
  private static final List<String> NOT_THERE =
      List.of("bench-not-there", "trial-not-kept-there", "page-not-there", "part-not-there");
  private static final List<String> NOT_ALLOWED =
      List.of(
          "device-not-paired", "host-not-ours", "page-not-ours", "token-stale", "devices-not-here");

  /** The store's trouble, not that of what was sent: a sheet keeps it and sends it again. */
  private static final List<String> NOT_NOW =
      List.of("store-disk-full", "store-disk-failed", "store-not-read", "store-not-written");

  private Refusals() {}

  /**
   * @param faults what is told of a fault of ours
   */
  static void on(RoutesConfig routes, Consumer<Throwable> faults) {
    routes.exception(Refused.class, (refused, ctx) -> say(ctx, refused, status(refused)));
    routes.exception(HttpResponseException.class, (e, ctx) -> http(ctx, e.getStatus()));
    routes.exception(Exception.class, (fault, ctx) -> fault(ctx, fault, faults));
    routes.error(404, "*", ctx -> http(ctx, 404));
  }

  /** The status of an answer that refuses. */
  static int status(Refused refused) {
    String code = refused.saying().code();
    if (NOT_NOW.contains(code)) {
      return 503;
    }
    return NOT_THERE.contains(code) ? 404 : NOT_ALLOWED.contains(code) ? 403 : 422;
  }

  private static void http(Context ctx, int status) {
    if (ctx.attribute("said") != null) {
      return; // it was said already, in more words
    }
    String code =
        switch (status) {
          case 404, 405 -> "page-not-there";
          case 413 -> "request-too-large";
          default -> "request-not-understood";
        };
    say(ctx, Refused.at(Place.NOWHERE, code), status);
  }

  private static void fault(Context ctx, Exception fault, Consumer<Throwable> faults) {
    if (!Thread.currentThread().isInterrupted()) { // else the workbook is being stopped
      faults.accept(fault);
    }
    String kind = fault.getClass().getSimpleName();
    say(ctx, Refused.at(Place.NOWHERE, "fault-page", Arg.of(kind)), 500);
  }

  /** The page of this workbook from which the request came; empty text where it is not known. */
  private static String back(Context ctx) {
    String from = String.valueOf(ctx.header("Referer"));
    String own = ctx.scheme() + "://" + ctx.host() + "/";
    return from.startsWith(own) && from.length() < 400 ? from.substring(own.length() - 1) : "";
  }

  /** As a document where one was asked for, else as a page. */
  private static void say(Context ctx, Refused refused, int status) {
    ctx.attribute("said", true);
    ctx.status(status);
    if (String.valueOf(ctx.header("Accept")).contains("application/json")) {
      ctx.contentType(Frame.JSON)
          .result(
              RefusalDocument.of(ctx.path(), refused.saying(), refused.place(), Sentences::text));
      return;
    }
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put(
        "shell",
        new Shell(
            words.word("workbook-refused"), List.of(), "", Shell.NO_CHARTS, words, List.of()));
    given.put("refusal", Sentences.refusal(refused));
    given.put("back", back(ctx));
    ctx.html(Pages.of("refused", given));
  }
}
