package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    List<Shell.Link> benches = new ArrayList<>();
    for (String name : cases.shelf().benches()) {
      benches.add(new Shell.Link(name, BenchLinks.base(benches.size() + 1), false));
    }
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.plain(ctx, words.word("workbook-benches"), words));
    given.put("benches", benches);
    given.put("here", frame.isHere(ctx));
    ctx.html(Pages.of("benches", given));
  }

  private void make(Context ctx) {
    int number = cases.makeBench().make(Forms.text(ctx, "name"));
    ctx.redirect(BenchLinks.base(number), HttpStatus.SEE_OTHER);
  }
}
