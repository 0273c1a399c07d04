package rundlauf.safety;

import java.util.Locale;
import java.util.Optional;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.QuantityText;
import rundlauf.quantity.Refused;
import rundlauf.readings.InspectionReadings.Item;

/**
 * The number beside an item that has a limit: {@code 0.12 ohm}, {@code 24 V dc}.
 *
 * @param direct whether {@code dc} stood behind it
 */
record ItemValue(Quantity quantity, boolean direct) {
  /**
   * Reads what was typed.
   *
   * @throws Refused for what is no number with a unit of the item's kind
   */
  static Optional<ItemValue> of(Item typed, SafetyItem.Limit limit) {
    if (typed.value().isEmpty()) {
      return Optional.empty();
    }
    String text = typed.value().get().strip();
    String lower = text.toLowerCase(Locale.ROOT);
    boolean direct = lower.endsWith(" dc");
    String number = direct || lower.endsWith(" ac") ? text.substring(0, text.length() - 3) : text;
    Place place = new Place(typed.place().file(), typed.line(), 0, "items.value");
    Quantity quantity = QuantityText.read(number, limit.unit().dimension(), false, place);
    return Optional.of(new ItemValue(quantity, direct));
  }
}
