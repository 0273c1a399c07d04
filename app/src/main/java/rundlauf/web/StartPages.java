package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.FormField;
import rundlauf.render.workbook.Pages;
import rundlauf.render.workbook.Shell;
import rundlauf.render.workbook.TrialForm;
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
    int bench = Frame.number(ctx, "bench");
    Wording words = new Wording();
    String setup = ctx.queryParam("setup") == null ? "" : "?" + ctx.queryString();
    List<Shell.Link> kinds = new ArrayList<>();
    for (TrialKind kind : TrialKind.values()) {
      String href = "/bench/" + bench + "/trial/new/" + kind.word() + setup;
      kinds.add(new Shell.Link(words.word("trial-kind-" + kind.word()), href, false));
    }
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.of(ctx, bench, words.word("start-which"), "[]", words));
    given.put("kinds", kinds);
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
    int number = Frame.number(ctx, "bench");
    Map<String, String> typed = Frame.fields(ctx);
    try {
      TrialName trial =
          cases.startTrial().start(cases.shelf().bench(number), kind(ctx).word(), typed);
      int at = cases.shelf().trials(number).indexOf(trial.trial()) + 1;
      ctx.redirect("/bench/" + number + "/trial/" + at + "/sheet", HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      give(ctx, typed, Optional.of(Sentences.refusal(refused)));
    }
  }

  private void give(Context ctx, Map<String, String> typed, Optional<Sentences.Refusal> refusal) {
    int number = Frame.number(ctx, "bench");
    TrialKind kind = kind(ctx);
    Bench bench = cases.results().bench(cases.shelf().bench(number));
    Wording words = new Wording();
    String title = words.word("trial-kind-" + kind.word());
    List<FormField> fields = TrialForm.begin(kind, bench, typed);
    if (refusal.isPresent()) {
      fields = fields.stream().map(field -> field.refusedBy(refusal.get())).toList();
    }
    boolean placed = fields.stream().anyMatch(field -> !field.refusal().isEmpty());
    Map<String, Object> given = new LinkedHashMap<>();
    List<Saying> standing =
        cases.standing().cautions(bench.name(), typed.getOrDefault("setup", ""), kind);
    given.put("shell", frame.of(ctx, number, title, "[]", words).saying(standing));
    given.put("heading", title);
    given.put("action", "/bench/" + number + "/trial/new/" + kind.word());
    given.put("refusal", placed ? "" : refusal.map(Sentences.Refusal::said).orElse(""));
    given.put("fields", fields);
    ctx.html(Pages.of("start", given));
  }

  private static TrialKind kind(Context ctx) {
    for (TrialKind kind : TrialKind.values()) {
      if (kind.word().equals(ctx.pathParam("kind"))) {
        return kind;
      }
    }
    throw Refused.at(Place.NOWHERE, "page-not-there");
  }
}
