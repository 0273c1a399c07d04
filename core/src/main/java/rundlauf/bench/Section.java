package rundlauf.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.QuantityText;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/**
 * The fields of one part of a document, asked for by name and kind. Whatever is not as it should be
 * is {@link Refused} with its place.
 */
public final class Section {
  /** Which values a field can have. */
  public enum Bound {
    ANY,
    POSITIVE,
    NOT_NEGATIVE
  }

  private final Entry.Fields fields;

  private Section(Entry.Fields fields) {
    this.fields = fields;
  }

  /** These fields, none of which may have a name that is not accepted. */
  public static Section of(Entry.Fields fields, String... accepted) {
    List<String> names = List.of(accepted);
    for (String name : fields.fields().keySet()) {
      if (!names.contains(name)) {
        Place place = fields.keyPlaces().getOrDefault(name, fields.place());
        throw looksParted(name)
            ? Refused.at(place.field(fields.place().field()), "comma-parted", Arg.typed(name))
            : Refused.at(
                place, "field-unknown", Arg.typed(name), Arg.list(Nearest.first(name, names)));
      }
    }
    return new Section(fields);
  }

  /** These fields if the entry has fields. */
  public static Section of(Entry entry, String... accepted) {
    if (entry instanceof Entry.Fields f) {
      return of(f, accepted);
    }
    throw Refused.at(entry.place(), "fields-expected", Arg.list(List.of(accepted)));
  }

  /** A field's name that begins with a digit is what a decimal comma left over. */
  private static boolean looksParted(String name) {
    return name.matches("\\d.*");
  }

  public Place place() {
    return fields.place();
  }

  /** Where a field's value stands; where it is missing, where it should. */
  public Place place(String name) {
    return fields.get(name).map(Entry::place).orElseGet(() -> missing(name));
  }

  private Place missing(String name) {
    String path = place().field();
    return place().field(path.isEmpty() ? name : path + "." + name);
  }

  public Optional<Entry> entry(String name) {
    return fields.get(name);
  }

  /** Whether anything is given; an empty text is not. */
  public boolean has(String name) {
    return entry(name).filter(e -> !(e instanceof Entry.Scalar s && isBlank(s))).isPresent();
  }

  private static boolean isBlank(Entry.Scalar scalar) {
    return scalar.text().isBlank();
  }

  /** A text, blanks around it taken off; an empty one counts as not given. */
  public Optional<String> text(String name) {
    return scalar(name).map(s -> s.text().strip()).filter(t -> !t.isEmpty());
  }

  public String requiredText(String name) {
    return text(name).orElseThrow(() -> Refused.at(place(name), "field-missing", Arg.of(name)));
  }

  /** One of the accepted words. */
  public Optional<String> word(String name, String... accepted) {
    Optional<String> word = text(name);
    if (word.isPresent() && !List.of(accepted).contains(word.get())) {
      Arg nearest = Arg.list(Nearest.first(word.get(), List.of(accepted)));
      throw Refused.at(place(name), "word-unknown", Arg.typed(word.get()), nearest);
    }
    return word;
  }

  /** A quantity, with or without ±. */
  public Optional<Quantity> quantity(String name, Dimension dimension, Bound bound) {
    return scalar(name).map(s -> quantity(s, dimension, bound));
  }

  public Quantity requiredQuantity(String name, Dimension dimension, Bound bound) {
    return quantity(name, dimension, bound)
        .orElseThrow(() -> Refused.at(place(name), "field-missing", Arg.of(name)));
  }

  /** A quantity of a field that is itself a limit or a rounding, so that ± has no meaning in it. */
  public Optional<Quantity> plain(String name, Dimension dimension, Bound bound) {
    Optional<Quantity> quantity = quantity(name, dimension, bound);
    if (quantity.isPresent() && quantity.get().hasLimits()) {
      throw Refused.at(place(name), "limits-not-taken", typed(name));
    }
    return quantity;
  }

  /** One quantity, its value within the bound. */
  public static Quantity quantity(Entry.Scalar scalar, Dimension dimension, Bound bound) {
    Quantity q = QuantityText.read(scalar.text(), dimension, scalar.flow(), scalar.place());
    if (bound == Bound.POSITIVE && !(q.si() > q.halfWidth())) {
      throw Refused.at(scalar.place(), "value-not-positive", Arg.typed(scalar.text()));
    }
    if (bound == Bound.NOT_NEGATIVE && q.si() < 0) {
      throw Refused.at(scalar.place(), "value-negative", Arg.typed(scalar.text()));
    }
    return q;
  }

  /** A whole number from {@code least} up, as a count must be. */
  public static int count(Entry.Scalar typed, int least) {
    double value = QuantityText.bare(typed.text(), Unit.ONE, typed.flow(), typed.place());
    if (value != Math.rint(value) || value < least || value > Integer.MAX_VALUE) {
      throw Refused.at(typed.place(), "count-expected", Arg.typed(typed.text()), Arg.of(least));
    }
    return (int) value;
  }

  /** What stands in a field, fit to be repeated. */
  public Arg typed(String name) {
    return Arg.typed(scalar(name).map(Entry.Scalar::text).orElse(""));
  }

  public Optional<Section> section(String name, String... accepted) {
    return entry(name).map(e -> of(e, accepted));
  }

  /** A list's entries; none when the field is not given. */
  public List<Entry> items(String name) {
    Entry entry = entry(name).orElse(null);
    if (entry == null || !has(name)) {
      return List.of();
    }
    if (entry instanceof Entry.Items list) {
      return list.items();
    }
    throw Refused.at(entry.place(), "list-expected", Arg.of(name));
  }

  /** A list of texts, or a single text standing for a list of one. */
  public List<String> texts(String name) {
    if (entry(name).orElse(null) instanceof Entry.Scalar) {
      return text(name).map(List::of).orElse(List.of());
    }
    List<String> texts = new ArrayList<>();
    items(name).forEach(e -> texts.add(scalar(e).text().strip()));
    return List.copyOf(texts);
  }

  private Optional<Entry.Scalar> scalar(String name) {
    return entry(name).map(Section::scalar);
  }

  /** The entry if it is a text. */
  public static Entry.Scalar scalar(Entry entry) {
    if (entry instanceof Entry.Scalar s) {
      return s;
    }
    throw Refused.at(entry.place(), "text-expected");
  }
}
