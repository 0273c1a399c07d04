package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Wording;
import rundlauf.render.methods.MethodPage;
import rundlauf.render.workbook.Pages;

/** How figures are made. */
final class MethodPages implements Group {
  private final Frame frame;

  MethodPages(Frame frame) {
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get("/method", ctx -> give(ctx, MethodPage.INDEX));
    routes.get("/method/{page}", ctx -> give(ctx, ctx.pathParam("page")));
  }

  private static String title(String name, MethodPage page, Wording words) {
    return name.equals(MethodPage.INDEX)
        ? page.title()
        : words.filled(
            "workbook-title", Arg.of(page.title()), Arg.of(words.word("workbook-methods")));
  }

  private void give(Context ctx, String name) {
    MethodPage page =
        MethodPage.of(name).orElseThrow(() -> Refused.at(Place.NOWHERE, "page-not-there"));
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.plain(ctx, title(name, page, words), words));
    given.put("page", page);
    ctx.html(Pages.of("method", given));
  }
}
