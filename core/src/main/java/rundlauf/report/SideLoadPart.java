package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.reduce.sideload.SideLoad;

/** A side-load trial: its figures, the loop and the budget of its stiffness. */
final class SideLoadPart {
  private SideLoadPart() {}

  static List<Block> blocks(Sheet sheet, SideLoad load) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(FigureTable.of(sheet, load.figures()));
    blocks.add(LoadChart.of(sheet, load));
    BudgetChart.of(sheet, "stiffness", Saying.of("report-budget-stiffness", ""), load.stiffness())
        .ifPresent(blocks::add);
    return blocks;
  }
}
