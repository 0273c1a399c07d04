package rundlauf.quantity;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads quantities as they are typed: {@code 0.01 mm}, {@code 60 ± 0.5 mm}, {@code 1/8 in}, {@code
 * 0,125 mm}.
 */
public final class QuantityText {
  private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0\u202f\u2009]+");

  /** The largest number in SI; our choice, above any modulus, speed or count of a workshop. */
  private static final double LARGEST = 1e15;

  private static final Pattern TYPED_LIMITS = Pattern.compile(".*\\+\\s*/?\\s*[-\u2212].*");

  private QuantityText() {}

  /**
   * A quantity of one kind.
   *
   * @param text what was typed; a number, perhaps ± a half-width, and a unit (none for a {@link
   *     Dimension#NUMBER})
   * @param dimension what the field measures
   * @param commaParts whether a comma would have parted the text where it stood: plain within
   *     {@code { }} or {@code [ ]}, or in a comma-parted table
   * @param place where it was typed
   * @return its value and half-width in SI; the half-width is that of a rectangular distribution
   *     (JCGM 100:2008, 4.3.7)
   * @throws Refused for a number, unit, kind of unit, ± or decimal comma that cannot be read one
   *     way only
   */
  public static Quantity read(String text, Dimension dimension, boolean commaParts, Place place) {
    String typed = BLANKS.matcher(text).replaceAll(" ").strip();
    if (typed.isEmpty()) {
      throw Refused.at(place, "quantity-empty", units(dimension));
    }
    if (TYPED_LIMITS.matcher(typed).matches()) {
      throw Refused.at(place, "limits-sign", Arg.typed(typed));
    }
    int mark = typed.indexOf('±');
    return mark < 0
        ? exact(typed, dimension, commaParts, place)
        : limited(typed, mark, dimension, commaParts, place);
  }

  /**
   * A bare number: a count, a ratio, or a cell whose unit stands in the column's name.
   *
   * @param text what was typed, blanks around it passed over
   * @param unit the unit it is in; {@link Unit#ONE} for a bare number
   * @param commaParts as in {@link #read}
   * @param place where it was typed
   * @return its value in SI
   * @throws Refused as {@link #read}, and for anything behind the number
   */
  public static double bare(String text, Unit unit, boolean commaParts, Place place) {
    String typed = BLANKS.matcher(text).replaceAll(" ").strip();
    if (typed.isEmpty()) {
      throw Refused.at(place, "cell-empty");
    }
    NumberText number = NumberText.read(typed, commaParts, place);
    if (!number.rest().isEmpty()) {
      String code = Unit.ofSymbol(number.rest()).isPresent() ? "cell-has-unit" : "number-not-read";
      throw Refused.at(place, code, Arg.typed(typed));
    }
    return inRange(unit.toSi(number.value()), typed, place);
  }

  private static Quantity exact(String typed, Dimension dimension, boolean parts, Place place) {
    NumberText number = NumberText.read(typed, parts, place);
    Unit unit = unit(number.rest(), typed, dimension, parts, place);
    return Quantity.exact(inRange(unit.toSi(number.value()), typed, place), unit);
  }

  private static Quantity limited(
      String typed, int mark, Dimension dimension, boolean parts, Place place) {
    String before = typed.substring(0, mark).strip();
    String after = typed.substring(mark + 1).strip();
    if (before.isEmpty() || after.isEmpty() || after.indexOf('±') >= 0) {
      throw Refused.at(place, "limits-not-read", Arg.typed(typed));
    }
    NumberText value = NumberText.read(before, parts, place);
    NumberText half = NumberText.read(after, parts, place);
    Unit unit = unit(half.rest(), typed, dimension, parts, place);
    Unit first = value.rest().isEmpty() ? unit : unit(value.rest(), typed, dimension, parts, place);
    if (half.value() < 0) {
      throw Refused.at(place, "limits-not-read", Arg.typed(typed));
    }
    return new Quantity(
        inRange(first.toSi(value.value()), typed, place),
        inRange(unit.toSi(half.value()), typed, place),
        first);
  }

  private static Unit unit(
      String symbol, String typed, Dimension dimension, boolean parts, Place place) {
    if (symbol.isEmpty()) {
      if (dimension == Dimension.NUMBER) {
        return Unit.ONE;
      }
      boolean mayBeParted = parts && typed.matches("[-\u2212]?\\d+"); // 0.01 was not cut by a comma
      String code = mayBeParted ? "unit-missing-or-comma" : "unit-missing";
      throw Refused.at(place, code, Arg.typed(typed), units(dimension));
    }
    Unit unit =
        Unit.ofSymbol(symbol)
            .orElseThrow(
                () ->
                    Refused.at(
                        place,
                        "unit-unknown",
                        Arg.typed(symbol),
                        Arg.typed(typed),
                        units(dimension)));
    if (unit.dimension() != dimension) {
      throw Refused.at(
          place,
          "unit-of-another-kind",
          Arg.typed(typed),
          term(unit.dimension()),
          term(dimension),
          units(dimension));
    }
    return unit;
  }

  private static double inRange(double si, String typed, Place place) {
    if (!(Math.abs(si) <= LARGEST)) {
      throw Refused.at(place, "number-out-of-range", Arg.typed(typed));
    }
    return si;
  }

  private static Arg term(Dimension dimension) {
    return Arg.term(dimension.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** The accepted units of a kind, as they are typed. */
  private static Arg units(Dimension dimension) {
    List<Unit> units = Unit.ofDimension(dimension);
    return Arg.list(units.stream().filter(u -> u != Unit.ONE).map(Unit::symbol).toList());
  }
}
