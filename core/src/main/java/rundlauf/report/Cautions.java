package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.report.Remarks.Remark;
import rundlauf.report.Remarks.Tone;

/** What must be read before anything else: spindles on hold and why, and whose word counts more. */
final class Cautions {
  private static final String ID = "cautions";

  private Cautions() {}

  static Section section(BenchResults results, List<Sheet> sheets) {
    List<Section> parts = new ArrayList<>();
    List<Remark> unseen = new ArrayList<>();
    Set<String> spindles = new LinkedHashSet<>();
    results.setups().forEach(s -> spindles.add(s.spindle()));
    for (String spindle : spindles) {
      var last = SpindleState.last(results, sheets, spindle);
      switch (SpindleState.of(last)) {
        case HELD -> parts.add(held(spindle, last.orElseThrow(), parts.size()));
        case NOT_INSPECTED ->
            unseen.add(
                new Remark(Saying.of("report-spindle-not-inspected", "", Arg.of(spindle)), ""));
        case INSPECTED -> {}
      }
    }
    readings(sheets).ifPresent(parts::add);
    List<Block> blocks = new ArrayList<>();
    blocks.add(Remarks.of(Tone.CAUTION, List.of(Saying.of("report-defer", ""))));
    if (!unseen.isEmpty()) {
      blocks.add(new Remarks(Tone.CAUTION, unseen));
    }
    return new Section(ID, Saying.of("report-cautions", ""), blocks, parts);
  }

  private static Section held(String spindle, SpindleState.Inspected last, int number) {
    List<Remark> because = new ArrayList<>();
    for (Saying reason : last.inspection().because()) {
      because.add(new Remark(reason, last.sheet().readings()));
    }
    return Section.of(
        "held-" + (number + 1),
        Saying.of("report-spindle-held", "", Arg.of(spindle)),
        List.of(new Remarks(Tone.CAUTION, because)));
  }

  /** Every caution that a trial's own readings gave, each leading to its trial. */
  private static Optional<Section> readings(List<Sheet> sheets) {
    List<Section> parts = new ArrayList<>();
    for (Sheet sheet : sheets) {
      List<Remark> remarks = new ArrayList<>();
      sheet
          .reduced()
          .ifPresent(r -> r.cautions().forEach(c -> remarks.add(new Remark(c, sheet.section()))));
      if (!remarks.isEmpty()) {
        Block block = new Remarks(Tone.CAUTION, remarks);
        parts.add(
            Section.of("cautions-" + sheet.number(), TrialPart.heading(sheet), List.of(block)));
      }
    }
    Saying heading = Saying.of("report-cautions-from-readings", "");
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("cautions-readings", heading, List.of(), parts));
  }
}
