package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Setup;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** A setup: what it is put together from, then every trial taken on it. */
final class SetupSection {
  private SetupSection() {}

  static String id(int number) {
    return "setup-" + (number + 1);
  }

  static Cell link(String name, int number) {
    return new Cell.Link(Saying.of("report-name", "", Arg.of(name)), id(number));
  }

  static List<Sheet> sheetsOf(String setup, List<Sheet> sheets) {
    return sheets.stream().filter(s -> s.outcome().setup().equals(Optional.of(setup))).toList();
  }

  static Section section(BenchResults results, List<Sheet> sheets, int number) {
    Setup setup = results.bench().setups().get(number);
    List<Sheet> own = sheetsOf(setup.name(), sheets);
    List<Block> blocks = new ArrayList<>();
    SpindleStanding standing = SpindleStanding.of(results, sheets, setup.spindle());
    if (standing.held()) {
      Saying held = Saying.of("report-spindle-held", "", Arg.of(setup.spindle()));
      Cell link = new Cell.Link(held, standing.last().orElseThrow().section());
      blocks.add(new Remarks(Remarks.Tone.CAUTION, List.of(Remarks.Remark.of(link))));
    }
    if (own.isEmpty()) {
      TrialPart.addRemarks(Remarks.Tone.CAUTION, Cautions.ofParts(results, setup), blocks);
    }
    blocks.add(Remarks.of(Remarks.Tone.NOTE, parts(setup, own.isEmpty())));
    List<Section> trials = own.stream().map(TrialPart::section).toList();
    return new Section(
        id(number), Saying.of("report-name", "", Arg.of(setup.name())), blocks, trials);
  }

  /** The trials that name no setup of the bench; empty when there are none. */
  static Optional<Section> others(BenchResults results, List<Sheet> sheets) {
    List<String> names = results.bench().setups().stream().map(Setup::name).toList();
    List<Section> trials =
        sheets.stream()
            .filter(s -> s.outcome().setup().filter(names::contains).isEmpty())
            .map(TrialPart::section)
            .toList();
    Saying heading = Saying.of("report-other-trials", "");
    return trials.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("other-trials", heading, List.of(), trials));
  }

  private static List<Saying> parts(Setup setup, boolean bare) {
    List<Saying> parts = new ArrayList<>();
    parts.add(Saying.of("report-part-spindle", "", Arg.of(setup.spindle())));
    setup.holder().ifPresent(h -> parts.add(Saying.of("report-part-holder", "", Arg.of(h))));
    setup.cutter().ifPresent(c -> parts.add(Saying.of("report-part-cutter", "", Arg.of(c))));
    setup
        .stickout()
        .ifPresent(s -> parts.add(Saying.of("report-part-stickout", "", Arg.of(s.si(), s.unit()))));
    if (bare) {
      parts.add(Saying.of("report-setup-without-trials", ""));
    }
    return parts;
  }
}
