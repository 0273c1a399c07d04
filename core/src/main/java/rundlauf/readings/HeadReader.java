package rundlauf.readings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.DateText;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/** What all trials have in common: their head, and that readings are there. */
final class HeadReader {
  private static final List<String> COMMON =
      List.of(
          "trial",
          "readings",
          "title",
          "date",
          "setup",
          "notes",
          "photos",
          "conditions",
          Intended.FIELD);

  private static final String[] CONDITIONS = {
    "warm-up", "temperature", "nut", "cleaned", "pin", "turned-by", "rotor"
  };

  private HeadReader() {}

  /** The trial's fields: those that every trial may have and those of its kind. */
  static Section section(Trial trial, TrialKind kind, String... own) {
    if (TrialKind.of(trial) != kind) {
      throw new IllegalArgumentException(trial.file() + " is no " + kind.word() + " trial");
    }
    Stream<String> names = Stream.concat(COMMON.stream(), Stream.of(own));
    return Section.of(trial.document(), names.toArray(String[]::new));
  }

  static TrialHead read(Trial trial, Section s, Optional<Bench> bench) {
    s.texts("photos");
    Intended.check(s);
    s.text("notes");
    return new TrialHead(
        trial.file(),
        trial.kind().strip(),
        s.text("title"),
        DateText.of(s),
        setup(s, bench),
        conditions(s));
  }

  /** The rows behind {@code readings}. */
  static Table table(Trial trial, Section s) {
    return trial.readings().orElseThrow(() -> Refused.at(s.place("readings"), "readings-missing"));
  }

  private static Optional<String> setup(Section s, Optional<Bench> bench) {
    Optional<String> setup = s.text("setup");
    if (setup.isPresent() && bench.isPresent() && bench.get().setup(setup.get()).isEmpty()) {
      List<String> defined = bench.get().setups().stream().map(one -> one.name()).toList();
      throw BenchReader.undefined(s.place("setup"), setup.get(), defined);
    }
    return setup;
  }

  /** How long the conditions say that the spindle had run [s]. */
  static OptionalDouble warmUp(Section s) {
    Optional<Quantity> said =
        s.section("conditions", CONDITIONS)
            .flatMap(c -> c.quantity("warm-up", Dimension.TIME, Bound.NOT_NEGATIVE));
    return said.isPresent() ? OptionalDouble.of(said.get().si()) : OptionalDouble.empty();
  }

  private static Map<String, String> conditions(Section s) {
    Map<String, String> given = new LinkedHashMap<>();
    Optional<Section> section = s.section("conditions", CONDITIONS);
    section.ifPresent(
        c -> {
          c.quantity("warm-up", Dimension.TIME, Bound.NOT_NEGATIVE);
          c.quantity("temperature", Dimension.TEMPERATURE, Bound.ANY);
          c.word("turned-by", "hand", "running");
          c.word("rotor", "free", "locked");
          for (String name : CONDITIONS) {
            c.text(name).ifPresent(text -> given.put(name, text));
          }
        });
    return given;
  }

  /** The refusal of a name where the bench that should define it was not read. */
  static Refused withoutBench(Section s, String field) {
    return Refused.at(s.place(field), "name-without-bench", s.typed(field), Arg.of(field));
  }
}
