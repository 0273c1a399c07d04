package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Pages;

/** What a bench gives away, and how another one is taken in. */
final class PublishPages implements Group {
  private final Cases cases;
  private final Frame frame;

  PublishPages(Cases cases, Frame frame) {
    this.cases = cases;
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get("/bench/{bench}/publish", this::page);
    routes.get("/bench/{bench}/report.html", this::report);
    routes.get("/bench/{bench}/package.zip", this::zip);
    routes.post("/package", this::take);
    routes.post("/bench/{bench}/copy", this::copy);
  }

  private void page(Context ctx) {
    page(ctx, "");
  }

  /**
   * @param copy where a copy of the store was just made; empty text where none was
   */
  private void page(Context ctx, String copy) {
    int number = Frame.bench(ctx);
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    String title = words.word("workbook-page-publish");
    given.put("shell", frame.of(ctx, number, title, words));
    given.put("base", BenchLinks.base(number));
    given.put("copy", copy);
    ctx.html(Pages.of("publish", given));
  }

  private void copy(Context ctx) {
    page(ctx, cases.backUpStore().backUp());
  }

  /** The report's own page lets its own script and style run, and nothing else. */
  private void report(Context ctx) {
    String bench = cases.shelf().bench(Frame.bench(ctx));
    ctx.removeHeader("Content-Security-Policy");
    ctx.header("Content-Disposition", "attachment; filename=\"report.html\"");
    ctx.contentType("text/html; charset=utf-8").result(cases.benchOutput().report(bench));
  }

  private void zip(Context ctx) {
    String bench = cases.shelf().bench(Frame.bench(ctx));
    ctx.header("Content-Disposition", "attachment; filename=\"package.zip\"");
    ctx.contentType("application/zip").result(cases.benchOutput().zip(bench));
  }

  private void take(Context ctx) {
    Forms.Sent sent = Forms.file(ctx, "package", "package-not-sent");
    String name = cases.importBench().take(sent.content(), sent.name());
    int number = cases.shelf().benches().indexOf(name) + 1;
    ctx.redirect(BenchLinks.base(number), HttpStatus.SEE_OTHER);
  }
}
