package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.render.Charts;
import rundlauf.render.Wording;
import rundlauf.render.workbook.Pages;
import rundlauf.render.workbook.Shell;
import rundlauf.render.workbook.TrialView;
import rundlauf.report.BenchPart;
import rundlauf.report.BenchResults;
import rundlauf.report.FigurePart;
import rundlauf.report.Section;
import rundlauf.usecase.Kept;
import rundlauf.usecase.Shelf;
import rundlauf.usecase.ShowTrial;

/** A trial with its figures, one figure of it, and the same as a document. */
final class TrialPages implements Group {
  private final Cases cases;
  private final Frame frame;

  TrialPages(Cases cases, Frame frame) {
    this.cases = cases;
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get(TrialLinks.TRIAL, this::trial);
    routes.get(TrialLinks.TRIAL + "/figure", this::figure);
    routes.get(TrialLinks.TRIAL + "/history", this::history);
    routes.get(TrialLinks.TRIAL + "/figures.json", this::document);
    routes.get(TrialLinks.TRIAL + "/attachment/{number}", this::attachment);
  }

  private Shelf.Placed placed(Context ctx) {
    return TrialLinks.placed(cases.shelf(), ctx);
  }

  private void trial(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    ShowTrial.Shown shown = cases.showTrial().show(placed.name());
    Wording words = TrialLinks.words(cases.shelf(), placed);
    List<Section> sections = BenchPart.trial(shown.bench(), shown.outcome());
    String title = words.say(sections.get(0).heading());
    Map<String, Object> given = new LinkedHashMap<>();
    Shell shell = frame.of(ctx, placed.bench(), title, Charts.of(sections, words), words);
    given.put("shell", shell.saying(standing(placed, shown)));
    given.put("sections", sections);
    given.put("view", view(placed, shown));
    ctx.html(Pages.of("trial", given));
  }

  private static TrialView view(Shelf.Placed placed, ShowTrial.Shown shown) {
    List<TrialView.Struck> struck = new ArrayList<>();
    for (Kept.Reading reading : shown.readings()) {
      reading
          .struck()
          .ifPresent(
              s ->
                  struck.add(
                      new TrialView.Struck(
                          reading.position(),
                          SheetViews.cells(reading),
                          s.reason(),
                          s.at().toString())));
    }
    List<TrialView.Edition> editions =
        shown.editions().stream()
            .map(e -> new TrialView.Edition(e.number(), e.at().toString(), e.document()))
            .toList();
    boolean hasSheet = TrialKind.ofWord(shown.outcome().trial().kind().strip()).isPresent();
    return new TrialView(
        TrialLinks.base(placed),
        hasSheet,
        struck,
        editions,
        Photos.of(placed, shown.attachments()));
  }

  private void figure(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    String path = String.valueOf(ctx.queryParam("path"));
    ShowTrial.Shown shown = cases.showTrial().show(placed.name());
    Section figure =
        FigurePart.of(shown.bench(), shown.outcome(), path)
            .orElseThrow(() -> Refused.at(Place.NOWHERE, "figure-not-there"));
    Wording words = TrialLinks.words(cases.shelf(), placed);
    List<Section> sections = List.of(figure);
    String title = words.say(FigurePart.name(path));
    String charts = Charts.of(sections, words);
    Map<String, Object> given = new LinkedHashMap<>();
    Shell shell = frame.of(ctx, placed.bench(), title, charts, words);
    given.put("shell", shell.saying(standing(placed, shown)));
    given.put("figure", figure);
    given.put("name", title);
    given.put("base", TrialLinks.base(placed));
    given.put("path", BenchLinks.encoded(path));
    given.put("kind", shown.outcome().trial().kind().strip());
    given.put("trial", words.say(BenchPart.heading(shown.bench(), shown.outcome())));
    ctx.html(Pages.of("figure", given));
  }

  private List<Saying> standing(Shelf.Placed placed, ShowTrial.Shown shown) {
    return cases.standing().ofTrial(placed.name().bench(), shown.outcome().trial());
  }

  /** The other trials have to be worked out for it. */
  private void history(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    String path = String.valueOf(ctx.queryParam("path"));
    BenchResults results = cases.results().results(placed.name().bench());
    List<String> files = results.outcomes().stream().map(o -> o.trial().file()).toList();
    Wording words =
        new BenchLinks(placed.bench(), files, cases.shelf().trials(placed.bench())).words();
    Optional<Section> history =
        FigurePart.history(results, cases.results().outcome(placed.name()), path);
    ctx.html(
        history.isPresent()
            ? Sections.piece(List.of(history.get()), words)
            : Pages.of("said", Map.of("text", words.say(Saying.of("figure-no-history", "")))));
  }

  private void document(Context ctx) {
    ctx.contentType(Frame.JSON).result(cases.trialDocument().of(placed(ctx).name()) + "\n");
  }

  private void attachment(Context ctx) {
    Shelf.Placed placed = placed(ctx);
    int number = Frame.number(ctx, "number");
    List<Kept.Attachment> all = cases.showTrial().attachments(placed.name());
    if (number < 1 || number > all.size()) {
      throw Refused.at(Place.NOWHERE, "part-not-there");
    }
    Kept.Attachment one = all.get(number - 1);
    Optional<String> photo = Photos.type(one.name());
    ctx.header("Cache-Control", "private, max-age=86400");
    if (photo.isEmpty()) {
      ctx.header("Content-Disposition", "attachment; filename=\"recording\"");
    }
    ctx.contentType(photo.orElse("application/octet-stream"))
        .result(cases.showTrial().content(one));
  }
}
