package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Pages;
import rundlauf.render.workbook.Shell;

/** The list of all benches; where there is one alone, it is opened. */
final class BenchesPages implements Group {
  private final Cases cases;
  private final Frame frame;

  BenchesPages(Cases cases, Frame frame) {
    this.cases = cases;
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get("/", this::first);
    routes.get("/bench", this::all);
    routes.post("/bench", this::make);
  }

  private void first(Context ctx) {
    if (cases.shelf().benches().size() == 1) {
      ctx.redirect(BenchLinks.base(1), HttpStatus.SEE_OTHER);
      return;
    }
    all(ctx);
  }

  private void all(Context ctx) {
    give(ctx, "", "");
  }

  private void give(Context ctx, String name, String refusal) {
    List<Shell.Link> benches = new ArrayList<>();
    for (String bench : cases.shelf().benches()) {
      benches.add(new Shell.Link(bench, BenchLinks.base(benches.size() + 1), false));
    }
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.plain(ctx, words.word("workbook-benches"), words));
    given.put("benches", benches);
    given.put("name", name);
    given.put("refusal", refusal);
    ctx.html(Pages.of("benches", given));
  }

  private void make(Context ctx) {
    String name = Forms.text(ctx, "name");
    Forms.take(
        ctx,
        () -> ctx.redirect(BenchLinks.base(cases.makeBench().make(name)), HttpStatus.SEE_OTHER),
        refused -> give(ctx, name, Sentences.refusal(refused).said()));
  }
}
