package rundlauf.safety;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;
import rundlauf.readings.InspectionReadings.Item;

/** The number beside an item that has a limit: {@code 0.12 ohm}, {@code 24 V dc}. */
record ItemValue(Quantity quantity, boolean direct) {
  private static final Pattern TYPED =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(\\p{L}+)(?:\\s+(ac|dc))?");

  /**
   * Reads what was typed.
   *
   * @throws Refused {@code inspection-value} for what is no number with a unit of the item's kind
   */
  static Optional<ItemValue> of(Item typed, SafetyItem.Limit limit, String file) {
    if (typed.value().isEmpty()) {
      return Optional.empty();
    }
    Matcher m = TYPED.matcher(typed.value().get().strip());
    Optional<Unit> unit = m.matches() ? Unit.ofSymbol(m.group(2)) : Optional.empty();
    if (unit.filter(u -> u.dimension() == limit.unit().dimension()).isEmpty()) {
      throw Refused.at(
          new Place(file, typed.line(), 0, "items.value"),
          "inspection-value",
          Arg.of(typed.value().get()),
          Arg.of(typed.item()),
          Arg.of(limit.unit().symbol()));
    }
    double number = Double.parseDouble(m.group(1).replace(',', '.'));
    Quantity quantity = Quantity.exact(unit.get().toSi(number), unit.get());
    return Optional.of(new ItemValue(quantity, "dc".equals(m.group(3))));
  }
}
