package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.Runout;
import rundlauf.report.Table.Row;

/** What spindle, collet and shank each add, and how to set them against each other. */
final class PartsTable {
  private PartsTable() {}

  /** Nothing where no station tells parts apart. */
  static List<Block> blocks(Sheet sheet, Runout runout) {
    List<Block> blocks = new ArrayList<>();
    long stations = runout.parts().stream().map(Runout.Part::station).distinct().count();
    if (runout.parts().size() > stations) {
      blocks.add(table(sheet, runout.parts()));
    }
    if (runout.bestClocking().tir().known()) {
      Saying set = runout.bestClocking().setting();
      blocks.add(Remarks.of(Remarks.Tone.NOTE, List.of(set)));
      addDials(sheet, runout.bestClocking(), blocks);
    }
    return blocks;
  }

  private static void addDials(Sheet sheet, BestClocking best, List<Block> blocks) {
    List<Chart> dials = ClockingDials.of(sheet, best);
    if (!dials.isEmpty()) {
      blocks.add(Remarks.of(Remarks.Tone.NOTE, List.of(Saying.of("report-clocking-key", ""))));
      blocks.addAll(dials);
    }
    ClockingCard.of(sheet, best).ifPresent(blocks::add);
  }

  private static Table table(Sheet sheet, List<Runout.Part> parts) {
    Samples heights =
        Samples.of(parts.stream().flatMap(p -> p.station().stream().boxed()).toList());
    Scale distance = Scale.showing(Unit.MILLIMETRE, heights, 3);
    List<Row> rows = new ArrayList<>();
    for (Runout.Part part : parts) {
      rows.add(
          Row.of(
              new Cell.Said(Saying.of("report-part", "", Arg.of(part.name()))),
              RunoutPart.optional(part.station(), distance),
              RunoutPart.brief(sheet, part.eccentricity()),
              RunoutPart.brief(sheet, part.highSpot())));
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-column-part"),
            Table.heading("report-column-station"),
            Table.heading("figure.parts.eccentricity"),
            Table.heading("figure.parts.highSpot"));
    return Table.of(Saying.of("report-parts-caption", ""), columns, rows, Table.Kind.FIGURES);
  }
}
