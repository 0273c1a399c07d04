package rundlauf.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.InspectionReadings.Item;
import rundlauf.readings.InspectionReadings.State;

/** What was looked at, judged: whether the spindle is held, and why. */
public final class InspectionReduction {
  private InspectionReduction() {}

  /** As {@link #reduce(InspectionReadings, List)} with the whole safety list. */
  public static Inspection reduce(InspectionReadings readings) {
    return reduce(readings, SafetyItem.of(SafetyItem.Fed.UNKNOWN));
  }

  /**
   * Judges an inspection.
   *
   * @param readings items as found
   * @param required what concerns this spindle
   * @return held with a reason for every fault on the list or off it, for every required item that
   *     is unchecked or not in the inspection, and for every number beyond its limit, whatever its
   *     item was marked
   * @throws Refused for a number beside an item with a limit that cannot be read
   * @see "docs/methods/inspection.md"
   */
  public static Inspection reduce(InspectionReadings readings, List<SafetyItem> required) {
    List<Saying> because = new ArrayList<>();
    List<Saying> cautions = new ArrayList<>();
    List<Saying> advice = new ArrayList<>();
    for (Item item : readings.items()) {
      state(item, required).ifPresent(because::add);
      beyond(item)
          .ifPresent(
              saying -> {
                because.add(saying);
                if (item.state() == State.GOOD) {
                  cautions.add(
                      Saying.of("inspection-good-beyond-limit", item.item(), word(item.item())));
                }
              });
      if (SafetyItem.named(item.item()).isEmpty()) {
        advice.add(Saying.of("inspection-not-on-list", item.item(), word(item.item())));
      }
    }
    because.addAll(absent(readings, required));
    if (!because.isEmpty()) {
      cautions.add(0, Saying.of("inspection-hold", "hold", Arg.of(because.size())));
    }
    advice.add(Saying.of("inspection-defers", "hold"));
    boolean hold = !because.isEmpty();
    return new Inspection(readings.head(), readings, hold, because, cautions, advice);
  }

  private static Optional<Saying> state(Item item, List<SafetyItem> required) {
    boolean listed = SafetyItem.named(item.item()).filter(required::contains).isPresent();
    return switch (item.state()) {
      case FAULT ->
          Optional.of(
              item.note().isPresent()
                  ? Saying.of(
                      "inspection-fault-noted",
                      item.item(),
                      word(item.item()),
                      Arg.typed(item.note().get()))
                  : Saying.of("inspection-fault", item.item(), word(item.item())));
      case UNCHECKED ->
          listed
              ? Optional.of(Saying.of("inspection-unchecked", item.item(), word(item.item())))
              : Optional.empty();
      case GOOD -> Optional.empty();
    };
  }

  private static Optional<Saying> beyond(Item item) {
    Optional<SafetyItem> known = SafetyItem.named(item.item());
    Optional<SafetyItem.Limit> listed = known.flatMap(SafetyItem::limit);
    if (listed.isEmpty()) {
      return Optional.empty();
    }
    Optional<ItemValue> value = ItemValue.of(item, listed.get());
    if (value.isEmpty()) {
      return Optional.empty();
    }
    SafetyItem.Limit limit = limit(known.get(), listed.get(), value.get());
    double found = value.get().quantity().si();
    String code = limit.most() ? "inspection-over-limit" : "inspection-under-limit";
    return limit.allows(found)
        ? Optional.empty()
        : Optional.of(
            Saying.of(
                code,
                item.item(),
                word(item.item()),
                Arg.of(found, value.get().quantity().unit()),
                Arg.of(limit.si(), limit.unit())));
  }

  /** A direct voltage has a higher limit; one that is not said to be direct has not. */
  private static SafetyItem.Limit limit(SafetyItem item, SafetyItem.Limit listed, ItemValue value) {
    return item == SafetyItem.TOUCHABLE_VOLTAGE && value.direct()
        ? SafetyItem.Limit.atMost(SafetyItem.TOUCHABLE_DC, listed.unit())
        : listed;
  }

  private static List<Saying> absent(InspectionReadings readings, List<SafetyItem> required) {
    List<Saying> absent = new ArrayList<>();
    for (SafetyItem item : required) {
      boolean there =
          readings.items().stream()
              .anyMatch(i -> SafetyItem.named(i.item()).filter(item::equals).isPresent());
      if (!there) {
        absent.add(Saying.of("inspection-absent", item.id(), word(item.id())));
      }
    }
    return absent;
  }

  /** An item of the list by its word in the bundle, another as it was typed. */
  private static Arg word(String item) {
    return SafetyItem.named(item).map(i -> Arg.term(i.id())).orElseGet(() -> Arg.typed(item));
  }
}
