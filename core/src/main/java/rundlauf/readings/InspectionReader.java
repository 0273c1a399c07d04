package rundlauf.readings;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;
import rundlauf.readings.InspectionReadings.State;

/** Understands an inspection. */
public final class InspectionReader {
  private static final Column ITEM = Column.bare("item");
  private static final Column STATE = Column.bare("state");
  private static final List<Column> COLUMNS =
      List.of(ITEM, STATE, Column.bare("value"), Column.bare("note"));

  private InspectionReader() {}

  /**
   * The items of an inspection with their states.
   *
   * @param trial as typed
   * @param bench that defines the names the trial uses; empty when it was read alone
   * @return the items in their order
   * @throws Refused for whatever is not as it should be, an item twice or no item
   */
  public static InspectionReadings read(Trial trial, Optional<Bench> bench) {
    Section s = HeadReader.section(trial, TrialKind.INSPECTION, "items");
    TrialHead head = HeadReader.read(trial, s, bench);
    if (s.has("readings") && s.has("items")) {
      throw Refused.at(s.place("readings"), "inspection-said-twice");
    }
    List<InspectionReadings.Item> items =
        trial.readings().isPresent()
            ? rows(Columns.of(trial.readings().get(), COLUMNS))
            : s.items("items").stream().map(InspectionReader::item).toList();
    refuseTwice(items);
    if (items.isEmpty()) {
      throw Refused.at(s.place("items"), "no-items");
    }
    return new InspectionReadings(head, items);
  }

  private static void refuseTwice(List<InspectionReadings.Item> items) {
    Set<String> seen = new LinkedHashSet<>();
    for (InspectionReadings.Item item : items) {
      if (!seen.add(item.item())) {
        throw Refused.at(item.place(), "name-twice", Arg.typed(item.item()), Arg.of("items"));
      }
    }
  }

  /** The same from a table: a row an item. */
  private static List<InspectionReadings.Item> rows(Columns columns) {
    columns.require(ITEM);
    columns.require(STATE);
    return columns.used().stream().map(row -> item(columns, row)).toList();
  }

  private static InspectionReadings.Item item(Columns columns, Table.Row row) {
    String item =
        text(columns, row, "item")
            .orElseThrow(
                () ->
                    Refused.at(
                        columns.typed(row, "item").place(), "field-missing", Arg.of("item")));
    String state =
        columns
            .word(row, "state", State.words())
            .orElseThrow(
                () ->
                    Refused.at(
                        columns.typed(row, "state").place(), "state-missing", Arg.typed(item)));
    return new InspectionReadings.Item(
        item,
        State.of(state),
        text(columns, row, "value"),
        text(columns, row, "note"),
        row.place());
  }

  private static Optional<String> text(Columns columns, Table.Row row, String name) {
    return columns.cell(row, name).map(cell -> cell.text().strip());
  }

  private static InspectionReadings.Item item(Entry entry) {
    Section s = Section.of(entry, "item", "state", "value", "note");
    String item = s.requiredText("item");
    String state =
        s.word("state", State.words().toArray(String[]::new))
            .orElseThrow(() -> Refused.at(s.place("state"), "state-missing", Arg.typed(item)));
    return new InspectionReadings.Item(
        item, State.of(state), s.text("value"), s.text("note"), s.place());
  }
}
