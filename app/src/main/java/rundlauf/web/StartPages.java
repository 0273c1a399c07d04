package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Pages;
import rundlauf.render.workbook.TrialForm;
import rundlauf.usecase.FirstTrial;
import rundlauf.usecase.TrialName;

/** Beginning a trial: first its kind, then what is known of it. */
final class StartPages implements Group {
  private static final String NEW = "/bench/{bench}/trial/new";

  private final Cases cases;
  private final Frame frame;

  StartPages(Cases cases, Frame frame) {
    this.cases = cases;
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get(NEW, this::kinds);
    routes.get(NEW + "/{kind}", this::form);
    routes.post(NEW + "/{kind}", this::start);
  }

  private void kinds(Context ctx) {
    int bench = Frame.bench(ctx);
    Wording words = new Wording();
    String setup = ctx.queryParam("setup") == null ? "" : "?" + ctx.queryString();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.of(ctx, bench, words.word("start-which"), words));
    given.put("base", BenchLinks.base(bench) + "/trial/new");
    given.put("query", setup);
    given.put("kit", BenchLinks.base(bench) + "/kit");
    Bench kept = cases.results().bench(cases.shelf().bench(bench));
    given.put("missing", FirstTrial.missing(kept).stream().map(Sentences::text).toList());
    ctx.html(Pages.of("kinds", given));
  }

  private void form(Context ctx) {
    Map<String, String> typed = new LinkedHashMap<>();
    String setup = ctx.queryParam("setup");
    typed.put("setup", setup == null ? "" : setup);
    typed.put("date", cases.today().get());
    typed.putAll(TrialForm.USUAL);
    give(ctx, typed, Optional.empty());
  }

  private void start(Context ctx) {
    Map<String, String> typed = Forms.given(ctx);
    Forms.take(
        ctx,
        () -> start(ctx, typed),
        refused -> give(ctx, typed, Optional.of(Sentences.refusal(refused))));
  }

  private void start(Context ctx, Map<String, String> typed) {
    int bench = Frame.bench(ctx);
    TrialName trial = cases.startTrial().start(cases.shelf().bench(bench), kind(ctx).word(), typed);
    int at = cases.shelf().trials(bench).indexOf(trial.trial()) + 1;
    ctx.redirect(TrialLinks.base(bench, at) + "/sheet", HttpStatus.SEE_OTHER);
  }

  private void give(Context ctx, Map<String, String> typed, Optional<Sentences.Refusal> refusal) {
    int number = Frame.bench(ctx);
    TrialKind kind = kind(ctx);
    Bench bench = cases.results().bench(cases.shelf().bench(number));
    Wording words = new Wording();
    String title = words.filled("start-heading", Arg.of(words.word("kind-" + kind.word())));
    Map<String, Object> given = new LinkedHashMap<>();
    List<Saying> standing =
        cases.standing().cautions(bench.name(), typed.getOrDefault("setup", ""), kind);
    given.put("shell", frame.of(ctx, number, title, words).saying(standing));
    given.put("heading", title);
    given.put("action", address(number, kind));
    given.putAll(Forms.shown(TrialForm.begin(kind, bench, typed), refusal));
    ctx.html(Pages.of("start", given));
  }

  private static String address(int bench, TrialKind kind) {
    return BenchLinks.base(bench) + "/trial/new/" + kind.word();
  }

  private static TrialKind kind(Context ctx) {
    return TrialKind.ofWord(ctx.pathParam("kind"))
        .orElseThrow(() -> Refused.at(Place.NOWHERE, "page-not-there"));
  }
}
