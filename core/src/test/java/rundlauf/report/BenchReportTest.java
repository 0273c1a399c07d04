package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Setup;
import rundlauf.bench.Trial;
import rundlauf.compare.Comparison;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.speed.Speed;
import rundlauf.safety.Inspection;

/** A bench of two setups on one spindle and one on another; every number is invented. */
class BenchReportTest {
  private static final Saying WHY = Saying.of("speed-no-load-step", "");

  private final List<Outcome> outcomes = new ArrayList<>();

  private Report report(String name) {
    List<Setup> setups =
        List.of(setup("Heron fine", "Heron"), setup("Heron rough", "Heron"), setup("Wren", "Wren"));
    var bench =
        new Bench(
            "shop/bench.yaml",
            name,
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            setups,
            List.of(),
            Optional.empty(),
            List.of());
    var comparison = new Comparison(setups.stream().map(Setup::name).toList(), List.of());
    return BenchReport.of(new BenchResults(bench, outcomes, comparison));
  }

  private static Setup setup(String name, String spindle) {
    return new Setup(
        name, spindle, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static TrialHead head(String kind, String setup, String date) {
    return new TrialHead(
        "shop/trials/" + date + ".yaml",
        kind,
        Optional.empty(),
        Optional.of(date),
        Optional.of(setup),
        new LinkedHashMap<>());
  }

  private static Trial trial(TrialHead head) {
    Place place = new Place(head.file(), 1, 1, "");
    Map<String, Entry> fields = new LinkedHashMap<>();
    fields.put("trial", new Entry.Scalar(head.kind(), false, place));
    return new Trial(
        head.file(), new Entry.Fields(fields, new LinkedHashMap<>(), place), Optional.empty());
  }

  private void add(Reduced reduced) {
    outcomes.add(new Outcome.Figures(trial(reduced.head()), reduced));
  }

  private static Inspection inspection(String setup, String date, boolean hold) {
    TrialHead head = head("inspection", setup, date);
    List<Saying> because = hold ? List.of(Saying.of("reason", date)) : List.of();
    return new Inspection(
        head, new InspectionReadings(head, List.of()), hold, because, List.of(), List.of());
  }

  private static Speed speed(String setup, String date, double fastest) {
    TrialHead head = head("speed", setup, date);
    Missing none = new Missing(Unit.RPM, WHY);
    return new Speed(
        head,
        new SpeedReadings(head, "", Samples.of(), List.of()),
        List.of(),
        none,
        Measured.exact(fastest, Unit.RPM),
        List.of(),
        none,
        none,
        none,
        List.of(),
        List.of());
  }

  private static Section part(Report report, String id) {
    return report.sections().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  /** Of the setups as they turn. */
  private static List<Cell> row(Report report, int number) {
    return row(report, 1, number);
  }

  private static List<Cell> row(Report report, int block, int number) {
    return ((Table) part(report, "side-by-side").blocks().get(block)).rows().get(number).cells();
  }

  @Test
  void cautionsComeFirstAndASpindleIsHeldOnAllItsSetups() {
    add(inspection("Heron fine", "2026-02-01", true));
    Report report = report("The inlay corner");
    assertThat(report.sections().get(0).id()).isEqualTo("cautions");
    assertThat(part(report, "cautions").parts().get(0).heading())
        .isEqualTo(Saying.of("report-spindle-held", "", Arg.of("Heron")));
    var held = new Cell.Link(Saying.of("report-state-held", ""), "trial-1");
    assertThat(row(report, 0).get(1)).isEqualTo(held);
    assertThat(row(report, 1).get(1)).isEqualTo(held);
    assertThat(row(report, 2).get(1))
        .isEqualTo(new Cell.Said(Saying.of("report-state-not-inspected", "")));
  }

  @Test
  void theLastInspectionByDateDecidesWhateverItsFileIsCalled() {
    add(inspection("Heron rough", "2026-03-01", false));
    add(inspection("Heron fine", "2026-02-01", true));
    Report report = report("The inlay corner");
    assertThat(row(report, 0).get(1))
        .isEqualTo(new Cell.Link(Saying.of("report-state-inspected", ""), "trial-1"));
  }

  @Test
  void theLastTrialOfAKindStandsSideBySideAndARefusedOneDoesNotHideIt() {
    add(speed("Wren", "2026-01-15", 100));
    add(speed("Wren", "2026-03-01", 200));
    add(speed("Wren", "2026-02-01", 150));
    TrialHead refused = head("speed", "Wren", "2026-04-01");
    Refused because = Refused.at(Place.NOWHERE, "no-rows");
    outcomes.add(new Outcome.Unusable(trial(refused), refused.setup(), because));
    Report report = report("The inlay corner");
    Cell fastest = row(report, 2, 2).get(7);
    assertThat(fastest).isInstanceOf(Cell.Shown.class);
    assertThat(((Cell.Shown) fastest).figure().value()).isEqualTo(200);
    assertThat(row(report, 2, 2).get(6))
        .isEqualTo(new Cell.Link(Saying.of("report-cannot-be-had", ""), "trial-2"));
    assertThat(row(report, 2, 0).get(7))
        .isEqualTo(new Cell.Said(Saying.of("report-not-measured", "")));
  }

  @Test
  void whereTheBenchLiesDoesNotShow() {
    add(speed("Wren", "2026-03-01", 200));
    assertThat(report("The inlay corner").toString())
        .contains("trials/2026-03-01.yaml")
        .doesNotContain("Word[text=shop/");
  }

  @Test
  void onlyABenchThatSaysSoIsCalledInvented() {
    Saying invented = Saying.of("report-invented", "");
    assertThat(report("Invented corner").notices()).contains(invented);
    assertThat(report("The inlay corner").notices()).doesNotContain(invented);
  }
}
