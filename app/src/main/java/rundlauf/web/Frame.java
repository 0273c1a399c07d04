package rundlauf.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Shell;
import rundlauf.usecase.Shelf;

/** What stands round a page, and what every page needs to know of its request. */
final class Frame {
  /** The type of a document. */
  static final String JSON = "application/json; charset=utf-8";

  /** The pages of a bench: the end of their address, and the word for them. */
  private static final List<List<String>> PAGES =
      List.of(
          List.of("", "workbook-page-bench"),
          List.of("/side-by-side", "workbook-page-side-by-side"),
          List.of("/jobs", "workbook-page-jobs"),
          List.of("/kit", "workbook-page-kit"),
          List.of("/publish", "workbook-page-publish"));

  private final Shelf shelf;
  private final Guard guard;

  Frame(Shelf shelf, Guard guard) {
    this.shelf = shelf;
    this.guard = guard;
  }

  /** Round a page of no bench; whoever is not let in sees no ways to others. */
  Shell plain(Context ctx, String title, Wording words) {
    List<Shell.Link> links = guard.isIn(ctx) ? around(ctx, words) : List.of();
    return new Shell(title, links, guard.token(ctx), Shell.NO_CHARTS, words, List.of());
  }

  /** Round a page of a bench that has no charts. */
  Shell of(Context ctx, int bench, String title, Wording words) {
    return of(ctx, bench, title, Shell.NO_CHARTS, words);
  }

  private List<Shell.Link> around(Context ctx, Wording words) {
    List<Shell.Link> links = new ArrayList<>();
    links.add(link(ctx, words.word("workbook-benches-all"), "/bench"));
    links.add(link(ctx, words.word("workbook-methods"), "/method"));
    if (guard.isHere(ctx)) {
      links.add(link(ctx, words.word("devices"), "/devices"));
    }
    return links;
  }

  private static Shell.Link link(Context ctx, String text, String href) {
    return new Shell.Link(text, href, ctx.path().equals(href));
  }

  /**
   * Round a page of a bench.
   *
   * @param charts of the page as a JSON list
   */
  Shell of(Context ctx, int bench, String title, String charts, Wording words) {
    String base = BenchLinks.base(bench);
    List<Shell.Link> links = new ArrayList<>();
    for (List<String> page : PAGES) {
      links.add(link(ctx, words.word(page.get(1)), base + page.get(0)));
    }
    links.addAll(around(ctx, words));
    String name = shelf.bench(bench);
    return new Shell(pageTitle(title, name), links, guard.token(ctx), charts, words, List.of());
  }

  private static String pageTitle(String title, String bench) {
    return title.equals(bench)
        ? title
        : Sentences.text(Saying.of("workbook-title", "", Arg.of(title), Arg.of(bench)));
  }

  /** Whether the device of a request is let in still, whenever it is asked. */
  BooleanSupplier stays(Context ctx) {
    return guard.stays(ctx);
  }

  /** The token of the session, for a page whose own is void. */
  String tokenDocument(Context ctx) {
    return "{\"token\":\"" + guard.token(ctx) + "\"}";
  }

  /** The number in a part of the address; 0, which nothing has, where it is no number. */
  static int number(Context ctx, String part) {
    String text = ctx.pathParam(part);
    return text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
  }

  /** The number of the bench in the address. */
  static int bench(Context ctx) {
    return number(ctx, "bench");
  }
}
