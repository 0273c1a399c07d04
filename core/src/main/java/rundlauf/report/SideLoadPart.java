package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.sideload.Compliances;
import rundlauf.reduce.sideload.SideLoad;

/** A side-load trial: its figures, the loop and the budget of its stiffness. */
final class SideLoadPart {
  private SideLoadPart() {}

  static List<Block> blocks(Sheet sheet, SideLoad load) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        FigureTable.of(sheet, FigureTable.only(load.figures(), path -> !path.contains("["))));
    SharesTable.of(sheet, load.compliances().shares()).ifPresent(blocks::add);
    SharesChart.of(sheet, load.compliances().shares()).ifPresent(blocks::add);
    reach(sheet, load.compliances()).ifPresent(blocks::add);
    ComplianceRoses.of(sheet, load).ifPresent(blocks::add);
    blocks.add(LoadChart.of(sheet, load.readings().points(), load.lines()));
    BudgetChart.of(sheet, "stiffness", Saying.of("report-budget-stiffness", ""), load.stiffness())
        .ifPresent(blocks::add);
    return blocks;
  }

  private static Optional<Block> reach(Sheet sheet, Compliances found) {
    if (found.reach().isEmpty()) {
      return Optional.empty();
    }
    Samples at = Samples.generate(found.reach().size(), i -> found.reach().get(i).at());
    Scale scale = Scale.showing(Unit.MILLIMETRE, at, 3);
    List<Table.Row> rows = new ArrayList<>();
    for (Compliances.Reach reach : found.reach()) {
      rows.add(Table.Row.of(new Cell.Number(reach.at(), scale), sheet.shown(reach.stiffness())));
    }
    List<Cell> columns =
        List.of(Table.heading("report-column-reach"), Table.heading("figure.reach.stiffness"));
    Saying caption = found.sayings().get(0);
    return Optional.of(Table.of(caption, columns, rows, Table.Kind.FIGURES));
  }
}
