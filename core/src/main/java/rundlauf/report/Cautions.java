package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rundlauf.bench.Setup;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.reduce.Reduced;
import rundlauf.report.Remarks.Remark;
import rundlauf.report.Remarks.Tone;
import rundlauf.safety.Inspection;
import rundlauf.safety.SetupCautions;

/** What must be read before anything else: spindles on hold and why, and whose word counts more. */
final class Cautions {
  private static final String ID = "cautions";

  private Cautions() {}

  static Section section(BenchResults results, List<Sheet> sheets) {
    List<Section> parts = new ArrayList<>();
    List<Saying> general = new ArrayList<>();
    general.add(Saying.of("report-defer", ""));
    Set<String> spindles = new LinkedHashSet<>();
    results.bench().setups().forEach(s -> spindles.add(s.spindle()));
    for (String spindle : spindles) {
      SpindleStanding standing = SpindleStanding.of(results, sheets, spindle);
      switch (standing.standing()) {
        case HELD -> parts.add(held(spindle, standing, parts.size()));
        case NOT_INSPECTED ->
            general.add(Saying.of("report-spindle-not-inspected", "", Arg.of(spindle)));
        case INSPECTED -> {}
      }
    }
    fromReadings(results, sheets).ifPresent(parts::add);
    Block first = Remarks.of(Tone.CAUTION, general);
    return new Section(ID, Saying.of("report-cautions", ""), List.of(first), parts);
  }

  private static Section held(String spindle, SpindleStanding standing, int number) {
    List<Remark> because = new ArrayList<>();
    standing.because().forEach(reason -> because.add(Remark.of(reason)));
    Cell.Link link =
        new Cell.Link(
            Saying.of("report-see-inspection", ""), standing.last().orElseThrow().section());
    return Section.of(
        "held-" + (number + 1),
        Saying.of("report-spindle-held", "", Arg.of(spindle)),
        List.of(
            new Remarks(Tone.CAUTION, because), new Remarks(Tone.NOTE, List.of(Remark.of(link)))));
  }

  /**
   * Every caution that a trial's own readings gave, led by the trial; once for a setup, and not
   * that of a hold, which stands above.
   */
  private static Optional<Section> fromReadings(BenchResults results, List<Sheet> sheets) {
    List<Remark> remarks = new ArrayList<>();
    Set<List<Object>> said = new LinkedHashSet<>();
    for (Sheet sheet : sheets) {
      Cell trial = new Cell.Link(TrialPart.heading(sheet), sheet.section());
      for (Saying caution : own(sheet)) {
        if (said.add(List.of(sheet.outcome().setup(), caution))) {
          remarks.add(Remark.of(trial, new Cell.Said(caution)));
        }
      }
    }
    for (int i = 0; i < results.bench().setups().size(); i++) {
      Setup setup = results.bench().setups().get(i);
      if (SetupSection.sheetsOf(setup.name(), sheets).isEmpty()) {
        Cell link = SetupSection.link(setup.name(), i);
        ofParts(results, setup).forEach(c -> remarks.add(Remark.of(link, new Cell.Said(c))));
      }
    }
    Saying heading = Saying.of("report-cautions-from-readings", "");
    return remarks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Section.of("cautions-readings", heading, List.of(new Remarks(Tone.CAUTION, remarks))));
  }

  /** Cautions of how a setup is put together; with trials, they stand in those. */
  static List<Saying> ofParts(BenchResults results, Setup setup) {
    OptionalDouble unknown = OptionalDouble.empty();
    return SetupCautions.of(results.bench(), setup, unknown, unknown);
  }

  private static List<Saying> own(Sheet sheet) {
    return sheet
        .reduced()
        .filter(r -> !(r instanceof Inspection i && i.hold()))
        .map(Reduced::cautions)
        .orElse(List.of());
  }
}
