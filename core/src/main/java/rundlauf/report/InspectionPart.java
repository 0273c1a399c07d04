package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.InspectionReadings.Item;
import rundlauf.report.Remarks.Tone;
import rundlauf.report.Table.Row;
import rundlauf.safety.Inspection;

/** An inspection: whether it holds the spindle, why, and every item of the list. */
final class InspectionPart {
  private InspectionPart() {}

  static List<Block> blocks(Sheet sheet, Inspection inspection) {
    List<Saying> cautions = new ArrayList<>(inspection.cautions());
    cautions.addAll(inspection.because());
    List<Block> blocks = new ArrayList<>();
    TrialPart.addRemarks(Tone.CAUTION, cautions, blocks);
    if (!inspection.hold()) {
      blocks.add(Remarks.of(Tone.NOTE, List.of(Saying.of("report-no-hold", ""))));
    }
    blocks.add(items(sheet, inspection));
    TrialPart.addRemarks(Tone.NOTE, inspection.advice(), blocks);
    return blocks;
  }

  private static Table items(Sheet sheet, Inspection inspection) {
    List<Row> rows = new ArrayList<>();
    for (Item item : inspection.readings().items()) {
      String state = item.state().word();
      rows.add(
          Row.of(
              new Cell.Typed(item.item()),
              new Cell.Said(Saying.of("report-item-" + state, "")),
              typed(item.value()),
              typed(item.note()),
              new Cell.Link(Saying.of("report-line", "", Arg.of(item.line())), sheet.readings())));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("item", "found", "item-value", "note", "line")) {
      columns.add(Table.heading("report-column-" + name));
    }
    Saying caption = Saying.of("report-items-caption", "", Arg.of(rows.size()));
    return new Table(caption, columns, rows, Table.Kind.FIGURES, !inspection.hold());
  }

  private static Cell typed(Optional<String> text) {
    return text.isPresent() ? new Cell.Typed(text.get()) : new Cell.Blank();
  }
}
