package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Spindle;
import rundlauf.planning.JobOutcome;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** Puts a bench's results into a report. */
public final class BenchReport {
  /** The word by which a bench says that its data are made up. */
  private static final String INVENTED = "invented";

  private BenchReport() {}

  /** As {@link #of(BenchResults, List)}, of a bench whose jobs are not planned. */
  public static Report of(BenchResults results) {
    return of(results, List.of());
  }

  /**
   * The whole report: cautions, side by side, jobs, differences, each setup, what was typed,
   * methods.
   *
   * @param jobs of the bench, as they were planned
   */
  public static Report of(BenchResults results, List<JobOutcome> jobs) {
    List<Sheet> sheets = sheets(results);
    List<Section> sections = new ArrayList<>();
    sections.add(Cautions.section(results, sheets));
    sections.add(SideBySide.section(results, sheets));
    JobsSection.section(results.bench(), jobs).ifPresent(sections::add);
    sections.add(Differences.section(results, sheets));
    for (int i = 0; i < results.bench().setups().size(); i++) {
      sections.add(SetupSection.section(results, sheets, i));
    }
    SetupSection.others(results, sheets).ifPresent(sections::add);
    sections.add(AsTyped.section(sheets));
    sections.add(Methods.section(sheets, !jobs.isEmpty()));
    Saying title = Saying.of("report-title", "", Arg.of(results.bench().name()));
    return new Report(title, notices(results), sections);
  }

  /** Every trial with its number. */
  static List<Sheet> sheets(BenchResults results) {
    List<Sheet> sheets = new ArrayList<>();
    for (Outcome outcome : results.outcomes()) {
      sheets.add(sheet(results.bench(), outcome, sheets.size() + 1));
    }
    return sheets;
  }

  /** One trial of a bench. */
  static Sheet sheet(Bench bench, Outcome outcome, int number) {
    String file = bench.file();
    String folder = file.substring(0, file.lastIndexOf('/') + 1);
    return new Sheet(number, folder, outcome, rotation(bench, outcome));
  }

  private static Optional<String> rotation(Bench bench, Outcome outcome) {
    return bench.setups().stream()
        .filter(s -> outcome.setup().equals(Optional.of(s.name())))
        .findFirst()
        .flatMap(
            s ->
                bench.spindles().stream()
                    .filter(spindle -> spindle.name().equals(s.spindle()))
                    .findFirst())
        .flatMap(Spindle::rotation);
  }

  static List<Saying> notices(BenchResults results) {
    List<Saying> notices = new ArrayList<>();
    if (says(results.bench().name())
        || results.bench().notes().filter(BenchReport::says).isPresent()) {
      notices.add(Saying.of("report-invented", ""));
    }
    results
        .bench()
        .notes()
        .ifPresent(n -> notices.add(Saying.of("report-bench-notes", "", Arg.of(n))));
    return notices;
  }

  private static boolean says(String text) {
    return text.toLowerCase(Locale.ROOT).contains(INVENTED);
  }
}
