package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Pages;
import rundlauf.render.workbook.SheetDocument;
import rundlauf.render.workbook.Shell;
import rundlauf.usecase.Kept;
import rundlauf.usecase.SheetState;
import rundlauf.usecase.Shelf;
import rundlauf.usecase.TrialName;
import rundlauf.usecase.TypedReading;
import rundlauf.wire.SentReading;

/** The sheet of a trial: what is asked, what is typed, what it tells so far. */
final class SheetPages implements Group {
  /** Characters of a reading as it is sent. Our choice; one has a few hundred. */
  private static final int LONGEST_READING = 100_000;

  private final Cases cases;
  private final Frame frame;
  private final SheetNews news = new SheetNews();

  SheetPages(Cases cases, Frame frame) {
    this.cases = cases;
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get(TrialLinks.TRIAL + "/sheet", this::page);
    routes.get(TrialLinks.TRIAL + "/sheet/now", this::now);
    routes.sse(TrialLinks.TRIAL + "/sheet/events", this::listen);
    routes.post(TrialLinks.TRIAL + "/readings", this::take);
    routes.post(TrialLinks.TRIAL + "/readings/{key}/strike", this::strike);
    routes.post(TrialLinks.TRIAL + "/conditions", this::say);
    routes.post(TrialLinks.TRIAL + "/photo", this::attach);
    routes.get("/token", ctx -> ctx.contentType(Frame.JSON).result(frame.tokenDocument(ctx)));
  }

  private Shelf.Placed placed(Context ctx) {
    return TrialLinks.placed(cases.shelf(), ctx);
  }

  private void page(Context ctx) {
    give(ctx, Map.of(), Optional.empty());
  }

  /** The sheet, with what was typed of its conditions where that was refused. */
  private void give(Context ctx, Map<String, String> typed, Optional<Sentences.Refusal> refusal) {
    Shelf.Placed placed = placed(ctx);
    SheetState state = cases.showSheet().show(placed.name());
    Wording words = TrialLinks.words(cases.shelf(), placed);
    Shell shell =
        frame
            .of(ctx, placed.bench(), SheetViews.heading(state, words), words)
            .saying(state.standing());
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", shell);
    given.put("page", SheetViews.page(placed, state, words));
    given.putAll(Forms.shown(SheetViews.conditions(state, typed), refusal));
    ctx.html(Pages.of("sheet", given));
  }

  private void now(Context ctx) {
    answer(ctx, placed(ctx));
  }

  private void answer(Context ctx, Shelf.Placed placed) {
    SheetState state = cases.showSheet().show(placed.name());
    ctx.contentType(Frame.JSON).result(document(placed, state));
  }

  private String document(Shelf.Placed placed, SheetState state) {
    return SheetDocument.of(
        SheetViews.view(placed, state), TrialLinks.words(cases.shelf(), placed));
  }

  private void listen(SseClient client) {
    TrialName trial = placed(client.ctx()).name();
    news.listen(trial, cases.showSheet().version(trial), client, frame.stays(client.ctx()));
  }

  private void take(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    SentReading sent = SentReading.read(body(ctx));
    List<TypedReading.Cell> cells =
        sent.cells().stream().map(c -> new TypedReading.Cell(c.column(), c.text())).toList();
    var typed = new TypedReading(sent.key(), cells);
    Kept.Reading kept = cases.takeReading().take(placed.name(), typed);
    ctx.contentType(Frame.JSON).result("{\"position\":" + kept.position() + "}");
    changed(placed);
  }

  private void strike(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    String reason = SentReading.reason(body(ctx));
    cases.strikeReading().strike(placed.name(), ctx.pathParam("key"), reason);
    ctx.contentType(Frame.JSON).result("{}");
    changed(placed);
  }

  /** Tells the devices that have the sheet open. */
  private void changed(Shelf.Placed placed) {
    if (news.isOpen(placed.name())) {
      news.changed(placed.name(), cases.showSheet().version(placed.name()));
    }
    if (cases.standing().isInspection(placed.name())) {
      news.inspected();
    }
  }

  private static String body(Context ctx) {
    String body = ctx.body();
    if (body.length() > LONGEST_READING) {
      throw Refused.at(Place.NOWHERE, "request-not-understood");
    }
    return body;
  }

  private void say(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    Map<String, String> typed = Forms.given(ctx);
    Forms.take(
        ctx,
        () -> {
          cases.sayConditions().say(placed.name(), typed);
          back(ctx, placed);
        },
        refused -> give(ctx, typed, Optional.of(Sentences.refusal(refused))));
  }

  private void attach(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    byte[] photo = Forms.file(ctx, "photo", "photo-unknown").content();
    cases.attachPhoto().attach(placed.name(), photo);
    back(ctx, placed);
  }

  private void back(Context ctx, Shelf.Placed placed) {
    changed(placed);
    ctx.redirect(TrialLinks.base(placed) + "/sheet", HttpStatus.SEE_OTHER);
  }
}
