package rundlauf.docs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rundlauf.bench.Entry;
import rundlauf.quantity.Place;

/**
 * A document with one thing changed.
 *
 * @param how where and in what way
 */
record Spoiled(String how, Entry entry) {
  private static final List<String> TEXTS =
      List.of("12 parsec", "12 mm", "1,5 mm", "NaN mm", "3 deg");

  /** Every piece changed in every way, one at a time. */
  static List<Spoiled> of(Entry entry) {
    List<Spoiled> all = new ArrayList<>();
    if (entry instanceof Entry.Fields fields) {
      fields.fields().keySet().forEach(name -> fieldSpoiled(fields, name, all));
      all.add(
          new Spoiled(
              "+gage",
              with(fields, "gage", "gage", new Entry.Scalar("1 mm", false, Place.NOWHERE))));
    } else if (entry instanceof Entry.Items items) {
      for (int i = 0; i < items.items().size(); i++) {
        int at = i;
        of(items.items().get(i))
            .forEach(s -> all.add(s.within("[" + at + "]", e -> with(items, at, e))));
      }
    } else if (entry instanceof Entry.Scalar scalar) {
      TEXTS.forEach(t -> all.add(new Spoiled("=" + t, new Entry.Scalar(t, false, scalar.place()))));
      all.add(new Spoiled("=[…]", new Entry.Items(List.of(scalar), scalar.place())));
      all.add(new Spoiled("={}", new Entry.Fields(Map.of(), Map.of(), scalar.place())));
    }
    return all;
  }

  private static void fieldSpoiled(Entry.Fields fields, String name, List<Spoiled> all) {
    Entry value = fields.fields().get(name);
    all.add(new Spoiled("-" + name, without(fields, name)));
    all.add(new Spoiled(name + "->" + name + "x", with(fields, name, name + "x", value)));
    if (!name.equals("readings")) {
      of(value).forEach(s -> all.add(s.within("." + name, e -> with(fields, name, name, e))));
    }
  }

  private Spoiled within(String place, Function<Entry, Entry> put) {
    return new Spoiled(place + how, put.apply(entry));
  }

  private static Entry.Fields without(Entry.Fields fields, String name) {
    Map<String, Entry> left = new LinkedHashMap<>(fields.fields());
    left.remove(name);
    return new Entry.Fields(left, fields.keyPlaces(), fields.place());
  }

  private static Entry.Fields with(Entry.Fields fields, String old, String name, Entry value) {
    Map<String, Entry> changed = new LinkedHashMap<>();
    fields
        .fields()
        .forEach((n, v) -> changed.put(n.equals(old) ? name : n, n.equals(old) ? value : v));
    changed.putIfAbsent(name, value);
    Map<String, Place> places = new LinkedHashMap<>(fields.keyPlaces());
    places.putIfAbsent(name, Place.NOWHERE);
    return new Entry.Fields(changed, places, fields.place());
  }

  private static Entry.Items with(Entry.Items items, int at, Entry value) {
    List<Entry> changed = new ArrayList<>(items.items());
    changed.set(at, value);
    return new Entry.Items(changed, items.place());
  }
}
