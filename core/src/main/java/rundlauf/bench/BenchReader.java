package rundlauf.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Understands a bench's document. */
public final class BenchReader {
  private static final String[] FIELDS = {
    "bench",
    "machine",
    "spindles",
    "holders",
    "cutters",
    "indicators",
    "rigs",
    "materials",
    "setups",
    "jobs",
    "notes"
  };

  private BenchReader() {}

  /**
   * The bench of a document.
   *
   * @param file as the user named it
   * @param document what {@code bench.yaml} says
   * @param trials its trials, as typed
   * @throws Refused for whatever is not as it should be, a name twice or a name not defined
   */
  public static Bench read(String file, Entry.Fields document, List<Trial> trials) {
    Section s = Section.of(document, FIELDS);
    Bench bench = bench(file, s, trials);
    for (Entry setup : s.items("setups")) {
      requireDefined(setup, "spindle", bench.spindles().stream().map(Spindle::name).toList());
      requireDefined(setup, "holder", bench.holders().stream().map(Holder::name).toList());
      requireDefined(setup, "cutter", cutters(bench));
    }
    s.items("jobs").forEach(job -> requireDefined(job, "cutter", cutters(bench)));
    return bench;
  }

  private static Bench bench(String file, Section s, List<Trial> trials) {
    return new Bench(
        file,
        s.requiredText("bench"),
        s.section("machine", "feed")
            .flatMap(m -> m.quantity("feed", Dimension.VELOCITY, Bound.POSITIVE)),
        named(s, "spindles", Spindle::of, Spindle::name),
        named(s, "holders", Holder::of, Holder::name),
        named(s, "cutters", Cutter::of, Cutter::name),
        named(s, "indicators", Indicator::named, i -> i.name().orElseThrow()),
        named(s, "rigs", Rig::named, r -> r.name().orElseThrow()),
        named(s, "materials", Material::defined, Material::name),
        named(s, "setups", Setup::of, Setup::name),
        named(s, "jobs", Job::of, Job::name),
        s.text("notes"),
        trials);
  }

  private static <T> List<T> named(
      Section s, String list, Function<Entry, T> read, Function<T, String> name) {
    List<T> all = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (Entry entry : s.items(list)) {
      T one = read.apply(entry);
      if (names.contains(name.apply(one))) {
        throw Refused.at(entry.place(), "name-twice", Arg.typed(name.apply(one)), Arg.of(list));
      }
      names.add(name.apply(one));
      all.add(one);
    }
    return all;
  }

  private static List<String> cutters(Bench bench) {
    return bench.cutters().stream().map(Cutter::name).toList();
  }

  /** Each name that stands in a field, or in its list, is one of those defined. */
  private static void requireDefined(Entry entry, String field, List<String> defined) {
    Entry typed = entry instanceof Entry.Fields f ? f.get(field).orElse(entry) : entry;
    List<Entry> names = typed instanceof Entry.Items list ? list.items() : List.of(typed);
    for (Entry name : names) {
      if (name instanceof Entry.Scalar s && !defined.contains(s.text().strip())) {
        throw undefined(s.place(), s.text().strip(), defined);
      }
    }
  }

  /** The refusal of a name that the bench does not define. */
  public static Refused undefined(Place place, String name, List<String> defined) {
    return defined.isEmpty()
        ? Refused.at(place, "name-none-defined", Arg.typed(name))
        : Refused.at(
            place, "name-not-defined", Arg.typed(name), Arg.list(Nearest.first(name, defined)));
  }
}
