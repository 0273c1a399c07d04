package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.planning.SetupPlan;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.report.Table.Row;

/** The cut that was chosen on one setup, or came nearest: its margins, chips and forces. */
final class CutPart {
  private CutPart() {}

  /** The cut that is told of; none for a held spindle, which must not be powered. */
  static Optional<Prediction> shown(SetupPlan plan) {
    return plan.best().filter(best -> !plan.held());
  }

  /** The section; empty where no cut is told of. */
  static Optional<Section> section(SetupPlan plan, String id) {
    return shown(plan).map(best -> section(plan, best, id));
  }

  private static Section section(SetupPlan plan, Prediction best, String id) {
    List<Block> blocks = new ArrayList<>();
    List<Saying> cut = new ArrayList<>();
    if (!plan.feasible()) {
      cut.add(Saying.of("report-nearest-miss", ""));
    }
    cut.add(words(plan, best));
    blocks.add(Remarks.of(Remarks.Tone.NOTE, cut));
    Set<Saying> cautions = new LinkedHashSet<>(plan.cautions());
    cautions.addAll(best.cautions());
    TrialPart.addRemarks(Remarks.Tone.CAUTION, JobPart.others(List.copyOf(cautions)), blocks);
    blocks.add(margins(best));
    List<Saying> assumed =
        best.limits().stream().flatMap(limit -> limit.assumed().stream()).distinct().toList();
    if (!assumed.isEmpty()) {
      List<Remarks.Remark> remarks = new ArrayList<>();
      for (Saying one : assumed) {
        remarks.add(
            Remarks.Remark.of(
                new Cell.Said(Saying.of("report-assumed-here", "")), new Cell.Said(one)));
      }
      blocks.add(new Remarks(Remarks.Tone.NOTE, remarks));
    }
    CutCharts.chips(best, id).ifPresent(blocks::add);
    CutCharts.forces(best, id).ifPresent(blocks::add);
    Saying heading = Saying.of("report-cut-on", "", Arg.of(plan.setup()));
    return Section.of(id, heading, blocks);
  }

  /** The cut in shop numbers. */
  static Saying words(SetupPlan plan, Prediction best) {
    var cut = best.task().cut();
    String operation = cut.operation().name().toLowerCase(Locale.ROOT).replace('_', '-');
    var figures = best.figures();
    Arg feed = Arg.about(figures.at("kinematics.feed").value(), Unit.MILLIMETRE_PER_MINUTE);
    var passes = plan.passes();
    return Saying.of(
        "report-cut",
        "",
        Arg.of(plan.cutter().orElse(best.task().cutter().name())),
        Arg.term("operation-" + operation),
        Arg.of(cut.speed().si(), Unit.RPM),
        feed,
        size(cut.axial().si()),
        size(cut.radial().si()),
        Arg.of(passes.map(p -> p.deep() * p.wide()).orElse(1)));
  }

  /** A depth or a width: to a thousandth of a millimetre as it was typed, finer ones roughly. */
  private static Arg size(double si) {
    double thousandths = 1000 * Unit.MILLIMETRE.fromSi(si);
    return Math.abs(thousandths - Math.rint(thousandths)) < 1e-6
        ? Arg.of(si, Unit.MILLIMETRE)
        : Arg.about(si, Unit.MILLIMETRE);
  }

  private static Table margins(Prediction best) {
    List<Row> rows = new ArrayList<>();
    for (Limit limit : best.limits()) {
      rows.add(
          Row.of(
              new Cell.Said(RankingTable.name(limit)),
              RankingTable.predicted(limit.value(), limit.assumedOfValue()),
              RankingTable.predicted(limit.allowed(), limit.assumedOfAllowed()),
              limit.judged()
                  ? RankingTable.predicted(limit.margin(), limit.assumed())
                  : new Cell.Blank(),
              verdict(limit)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("limit", "value", "allowed", "margin", "holds")) {
      columns.add(Table.heading("report-margin-column-" + name));
    }
    Arg together = Arg.of(Math.round(100 * best.probability()));
    Saying caption = Saying.of("report-margins", "", together);
    return Table.of(caption, columns, rows, Table.Kind.FIGURES);
  }

  private static Cell verdict(Limit limit) {
    OptionalDouble probability = limit.probability();
    if (probability.isEmpty()) {
      return new Cell.Said(Saying.of("report-limit-not-judged", ""));
    }
    Saying word = Saying.of(limit.holds() ? "report-limit-holds" : "report-limit-fails", "");
    return new Cell.SaidAll(List.of(word, RankingTable.odds(probability.getAsDouble())));
  }
}
