package rundlauf.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;

/** Understands an inspection. */
public final class InspectionReader {
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
    if (s.has("readings")) {
      throw Refused.at(s.place("readings"), "inspection-has-no-readings");
    }
    List<InspectionReadings.Item> items = new ArrayList<>();
    for (Entry entry : s.items("items")) {
      InspectionReadings.Item item = item(entry);
      if (items.stream().anyMatch(one -> one.item().equals(item.item()))) {
        throw Refused.at(entry.place(), "name-twice", Arg.typed(item.item()), Arg.of("items"));
      }
      items.add(item);
    }
    if (items.isEmpty()) {
      throw Refused.at(s.place("items"), "no-items");
    }
    return new InspectionReadings(head, items);
  }

  private static InspectionReadings.Item item(Entry entry) {
    Section s = Section.of(entry, "item", "state", "value", "note");
    String item = s.requiredText("item");
    String state =
        s.word("state", "good", "fault", "unchecked")
            .orElseThrow(() -> Refused.at(s.place("state"), "state-missing", Arg.typed(item)));
    return new InspectionReadings.Item(
        item,
        InspectionReadings.State.valueOf(state.toUpperCase(Locale.ROOT)),
        s.text("value"),
        s.text("note"),
        s.place().line());
  }
}
