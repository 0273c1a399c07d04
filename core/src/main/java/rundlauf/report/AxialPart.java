package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.reduce.axial.Axial;

/** An axial trial: its figures, the loop and the budget of its stiffness. */
final class AxialPart {
  private AxialPart() {}

  static List<Block> blocks(Sheet sheet, Axial axial) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(FigureTable.of(sheet, axial.figures()));
    blocks.add(LoadChart.of(sheet, axial.readings().points(), axial.lines()));
    Saying caption = Saying.of("report-budget-axial-stiffness", "");
    BudgetChart.of(sheet, "axial-stiffness", caption, axial.axialStiffness())
        .ifPresent(blocks::add);
    return blocks;
  }
}
