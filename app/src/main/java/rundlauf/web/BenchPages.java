package rundlauf.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.bench.Bench;
import rundlauf.bench.EntryTexts;
import rundlauf.bench.Trial;
import rundlauf.maths.Stopped;
import rundlauf.planning.JobOutcome;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.render.Wording;
import rundlauf.render.workbook.BenchView;
import rundlauf.render.workbook.Pages;
import rundlauf.report.BenchPart;
import rundlauf.report.BenchResults;
import rundlauf.report.Outcome;
import rundlauf.report.Section;
import rundlauf.usecase.Progress;

/** A bench at a glance: its setups with their trials, and which of them is best for which job. */
final class BenchPages implements Group {
  private final Cases cases;
  private final Frame frame;

  BenchPages(Cases cases, Frame frame) {
    this.cases = cases;
    this.frame = frame;
  }

  @Override
  public void on(RoutesConfig routes) {
    routes.get("/bench/{bench}", this::bench);
    routes.get("/bench/{bench}/figures", this::figures);
    routes.get("/bench/{bench}/best", this::best);
    routes.get("/bench/{bench}/jobs", ctx -> waiting(ctx, "report-jobs", "jobs"));
    routes.get("/bench/{bench}/jobs/planned", this::jobs);
    routes.get("/bench/{bench}/planning", this::planning);
    routes.post("/bench/{bench}/planning/stop", this::stopPlanning);
    routes.get(
        "/bench/{bench}/side-by-side", ctx -> waiting(ctx, "workbook-page-side-by-side", "side"));
    routes.get("/bench/{bench}/differences", this::differences);
  }

  /** At once: what does not have to be worked out. */
  private void bench(Context ctx) {
    int number = Frame.bench(ctx);
    Bench bench = cases.results().bench(cases.shelf().bench(number));
    Wording words = links(number, bench.trials()).words();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.of(ctx, number, bench.name(), words));
    given.put("view", view(number, bench, words));
    ctx.html(Pages.of("bench", given));
  }

  private BenchLinks links(int number, List<Trial> trials) {
    List<String> files = trials.stream().map(Trial::file).toList();
    return new BenchLinks(number, files, cases.shelf().trials(number));
  }

  private BenchView view(int number, Bench bench, Wording words) {
    List<BenchView.Setup> setups = new ArrayList<>();
    List<Trial> left = new ArrayList<>(bench.trials());
    for (int i = 0; i < bench.setups().size(); i++) {
      String name = bench.setups().get(i).name();
      List<BenchView.TrialLink> trials = new ArrayList<>();
      for (Trial trial : bench.trials()) {
        if (EntryTexts.all(trial.document()).getOrDefault("setup", "").strip().equals(name)) {
          trials.add(link(bench, trial, words));
          left.remove(trial);
        }
      }
      String measure = BenchLinks.measure(number, name);
      setups.add(new BenchView.Setup("setup-" + (i + 1), name, measure, trials));
    }
    List<BenchView.TrialLink> others = left.stream().map(t -> link(bench, t, words)).toList();
    return new BenchView(BenchLinks.base(number), setups, others, !bench.jobs().isEmpty());
  }

  private static BenchView.TrialLink link(Bench bench, Trial trial, Wording words) {
    Map<String, String> typed = EntryTexts.all(trial.document());
    String kind = "trial-kind-" + trial.kind().strip();
    String said = Sentences.has(kind) ? words.say(Saying.of(kind, "")) : trial.kind().strip();
    return new BenchView.TrialLink(
        said,
        typed.getOrDefault("date", ""),
        typed.getOrDefault("title", ""),
        words.href("trial-" + (bench.trials().indexOf(trial) + 1)));
  }

  private void figures(Context ctx) {
    give(ctx, results -> List.of(BenchPart.cautions(results), BenchPart.sideBySide(results)));
  }

  private void differences(Context ctx) {
    give(ctx, results -> List.of(BenchPart.sideBySide(results), BenchPart.differences(results)));
  }

  private void best(Context ctx) {
    give(ctx, results -> List.of(BenchPart.best(results.bench(), plans(ctx))));
  }

  private void jobs(Context ctx) {
    Map<String, Object> base = Map.of("base", BenchLinks.base(Frame.bench(ctx)));
    give(ctx, "planned", base, r -> BenchPart.jobs(r.bench(), plans(ctx)).stream().toList());
  }

  /** Every job with every cut; it takes its time. */
  private List<JobOutcome> plans(Context ctx) {
    return cases.results().plans(name(ctx));
  }

  private String name(Context ctx) {
    return cases.shelf().bench(Frame.bench(ctx));
  }

  /** How far the jobs are planned, for a page that waits for them. */
  private void planning(Context ctx) {
    Optional<Progress> progress = cases.results().planning(name(ctx)).filter(p -> p.of() > 0);
    ctx.html(
        progress
            .map(p -> Saying.of("bench-planning", "", Arg.of(p.done()), Arg.of(p.of())))
            .map(saying -> Pages.of("said", Map.of("text", new Wording().say(saying))))
            .orElse(""));
  }

  private void stopPlanning(Context ctx) {
    cases.results().stopPlanning(name(ctx));
    ctx.status(HttpStatus.NO_CONTENT);
  }

  /** A piece of a page that takes its time. */
  private void give(Context ctx, Function<BenchResults, List<Section>> part) {
    give(ctx, "piece", Map.of(), part);
  }

  private void give(
      Context ctx,
      String template,
      Map<String, Object> more,
      Function<BenchResults, List<Section>> part) {
    int number = Frame.bench(ctx);
    BenchResults results = cases.results().results(cases.shelf().bench(number));
    Wording words = links(number, trials(results)).words();
    try {
      ctx.html(Sections.piece(template, more, part.apply(results), words));
    } catch (Stopped stopped) {
      ctx.html(Pages.of("stopped", Map.of("words", words)));
    }
  }

  private static List<Trial> trials(BenchResults results) {
    return results.outcomes().stream().map(Outcome::trial).toList();
  }

  /** A page whose piece takes its time. */
  private void waiting(Context ctx, String title, String page) {
    int number = Frame.bench(ctx);
    Wording words = new Wording();
    Map<String, Object> given = new LinkedHashMap<>();
    given.put("shell", frame.of(ctx, number, words.word(title), words));
    given.put("base", BenchLinks.base(number));
    ctx.html(Pages.of(page, given));
  }
}
