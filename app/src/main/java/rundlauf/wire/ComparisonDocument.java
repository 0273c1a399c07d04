package rundlauf.wire;

import java.util.List;
import java.util.function.Function;
import rundlauf.compare.Comparison;
import rundlauf.compare.Trait;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.Reduced;
import rundlauf.report.BenchComparison;
import rundlauf.report.Outcome;
import rundlauf.report.SetupSide;
import rundlauf.safety.Standing;

/** The JSON document of a bench's setups side by side. */
public final class ComparisonDocument {
  private ComparisonDocument() {}

  /**
   * The document on one line, without a line end.
   *
   * @param file the bench as the user named it
   */
  public static String of(String file, BenchComparison found, Function<Saying, String> wording) {
    return JsonLine.of(
        wording,
        json -> {
          json.text("file", file);
          json.text("bench", found.results().bench().name());
          json.list("setups", found.setups(), side -> side(json, side));
          json.list("pairs", found.results().comparison().pairs(), pair -> pair(json, pair));
          json.list("refused", refused(found), one -> refused(json, one));
          json.sayings("cautions", found.cautions());
          json.sayings("advice", List.of());
        });
  }

  private static void side(JsonLine json, SetupSide side) {
    var setup = side.setup();
    json.text("setup", setup.name());
    json.text("spindle", setup.spindle());
    json.text("holder", setup.holder());
    json.text("cutter", setup.cutter());
    json.text("standing", side.standing().code());
    json.truth("hold", side.standing() == Standing.HELD);
    json.sayings("because", side.because());
    json.object(
        "trials", () -> side.latest().results().forEach(r -> json.text(r.head().kind(), file(r))));
    json.object(
        "figures", () -> Trait.ALL.forEach(t -> json.figure(t.path(), t.of(side.latest()))));
    json.object("earlier", () -> Trait.ALL.forEach(t -> earlier(json, t, side)));
    VerdictList.write(json, side.verdicts());
    json.sayings("cautions", side.cautions());
  }

  /** Where a figure is from that the latest trial does not tell. */
  private static void earlier(JsonLine json, Trait trait, SetupSide side) {
    trait.earlier(side.latest()).ifPresent(result -> json.text(trait.path(), file(result)));
  }

  private static String file(Reduced result) {
    return result.head().file();
  }

  private static void pair(JsonLine json, Comparison.Pair pair) {
    json.text("a", pair.a());
    json.text("b", pair.b());
    json.list("differences", pair.differences(), one -> difference(json, one));
  }

  private static void difference(JsonLine json, Comparison.Difference one) {
    json.text("trial", one.kind());
    json.text("figure", one.figure());
    json.number("station_mm", one.station(), Unit.MILLIMETRE);
    json.figure("a", one.ofA());
    json.figure("b", one.ofB());
    json.text("aFile", one.aFile());
    json.text("bFile", one.bFile());
    json.figure("difference", one.difference());
    if (one.aSmaller().isPresent()) {
      json.number("aSmaller", one.aSmaller().getAsDouble());
    } else {
      json.nothing("aSmaller");
    }
    json.truth("fair", one.fair());
    json.text("verdict", one.verdict().code());
    json.text("better", one.better());
    json.sayings("because", one.because());
    json.sayings("unsaid", one.unsaid());
  }

  private static List<Outcome.Unusable> refused(BenchComparison found) {
    return found.results().outcomes().stream()
        .filter(Outcome.Unusable.class::isInstance)
        .map(Outcome.Unusable.class::cast)
        .toList();
  }

  private static void refused(JsonLine json, Outcome.Unusable one) {
    json.text("file", one.trial().file());
    json.text("setup", one.setup());
    json.object(
        "error",
        () ->
            RefusalDocument.error(
                json, one.trial().file(), one.refused().saying(), one.refused().place()));
  }
}
