package rundlauf.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Setup;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.compare.Comparison;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.report.BenchResults;
import rundlauf.report.Outcome;

/** A small luthier's bench with results written by hand; every number is invented. */
final class InventedBench {
  static final String HOSTILE = "<img src=x onerror=alert(1)> & \"quoted\" </script>";

  private InventedBench() {}

  static BenchResults results() {
    List<Setup> setups =
        List.of(
            setup("Heron, collet, 1 mm pearl cutter", "Heron"),
            setup("Wren, chuck, fret saw", "Wren"),
            setup("Dunlin, bare", "Dunlin"));
    List<Outcome> outcomes = new ArrayList<>();
    String heron = setups.get(0).name();
    String wren = setups.get(1).name();
    outcomes.add(
        done(InventedResults.inspection(head("inspection", heron, "Before the winter"), false)));
    outcomes.add(done(InventedResults.runout(head("runout", heron, HOSTILE), 2)));
    outcomes.add(
        done(InventedResults.sideLoad(head("side-load", heron, "Brass lever, both ways"))));
    outcomes.add(done(InventedResults.speed(head("speed", heron, "With the phone"))));
    outcomes.add(done(InventedResults.inspection(head("inspection", wren, "Frayed lead"), true)));
    outcomes.add(done(InventedResults.runout(head("runout", wren, "One sweep"), 1)));
    TrialHead refused = head("runout", wren, "Two readings");
    outcomes.add(
        new Outcome.Unusable(
            trial(refused),
            refused.setup(),
            Refused.at(new Place(refused.file(), 5, 0, "readings"), "no-rows")));
    return new BenchResults(bench(setups), outcomes, comparison(setups));
  }

  private static Comparison comparison(List<Setup> setups) {
    Measured a = InventedResults.length("a", 97, 5, 12);
    Measured b = InventedResults.length("b", 130, 5, 10);
    var difference =
        new Comparison.Difference(
            "runout",
            "nextClamping.tir",
            OptionalDouble.empty(),
            a,
            b,
            a.minus(b),
            OptionalDouble.of(0.983),
            Comparison.Verdict.BETTER,
            Optional.of(setups.get(0).name()),
            "trials/Hero-runout.yaml",
            "trials/Wren-runout.yaml",
            List.of(),
            List.of());
    var pair = new Comparison.Pair(setups.get(0).name(), setups.get(1).name(), List.of(difference));
    return new Comparison(setups.stream().map(Setup::name).toList(), List.of(pair));
  }

  private static Bench bench(List<Setup> setups) {
    return new Bench(
        "bench.yaml",
        "The inlay corner",
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        setups,
        List.of(),
        Optional.of("Invented for a demonstration."),
        List.of());
  }

  private static Setup setup(String name, String spindle) {
    return new Setup(
        name,
        spindle,
        Optional.of("ER11 3 mm"),
        Optional.of("1 mm two-flute"),
        Optional.of(Quantity.exact(0.018, Unit.MILLIMETRE)),
        Optional.empty());
  }

  private static Outcome done(Reduced reduced) {
    return new Outcome.Figures(trial(reduced.head()), reduced);
  }

  private static TrialHead head(String kind, String setup, String title) {
    return new TrialHead(
        "trials/" + setup.substring(0, 4) + "-" + kind + ".yaml",
        kind,
        Optional.of(title),
        Optional.empty(),
        Optional.of(setup),
        new LinkedHashMap<>());
  }

  private static Trial trial(TrialHead head) {
    Map<String, Entry> fields = new LinkedHashMap<>();
    fields.put("trial", scalar(head, head.kind(), 1));
    fields.put("title", scalar(head, head.title().orElseThrow(), 2));
    fields.put("readings", scalar(head, "as a table", 3));
    Table table =
        new Table(
            List.of(scalar(head, "angle_deg", 4), scalar(head, "reading_um", 4)),
            List.of(row(head, 5, "0", "10"), row(head, 6, "45", "=HYPERLINK(1)")),
            true,
            new Place(head.file(), 4, 3, ""));
    return new Trial(
        head.file(),
        new Entry.Fields(fields, Map.of(), new Place(head.file(), 1, 1, "")),
        Optional.of(table));
  }

  private static Table.Row row(TrialHead head, int line, String... cells) {
    return new Table.Row(
        Arrays.stream(cells).map(c -> scalar(head, c, line)).toList(),
        new Place(head.file(), line, 3, ""));
  }

  private static Entry.Scalar scalar(TrialHead head, String text, int line) {
    return new Entry.Scalar(text, false, new Place(head.file(), line, 3, ""));
  }
}
