package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.guide.Asked;
import rundlauf.guide.Guidance;
import rundlauf.guide.Guide;
import rundlauf.guide.Step;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Refused;
import rundlauf.readings.Unfinished;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.Shares;
import rundlauf.reduce.sideload.SideLoad;

/** A trial that is taken as its sheet says is a trial that can be reduced. */
class GuideFollowedTest {
  private static final TypedDocuments DOCUMENTS = new TypedDocuments();
  private static final Bench BENCH = DOCUMENTS.bench(DemoBenchFiles.contents());
  private static final int MOST_STEPS = 400;

  private static final String DIAL = "setup: Heron 3 mm\nindicator: plunger dial\n";
  private static final String TURNS = "runout, three turns";
  private static final String BODIES = "side-load, from body to body";
  private static final Map<String, String> HEADS = heads();

  private static Map<String, String> heads() {
    Map<String, String> heads = new LinkedHashMap<>();
    String runout = "trial: runout\n" + DIAL + "gauge: {diameter: 3 mm, tip: 25 mm}\n";
    String load = DIAL + "load: brass lever\nreference: table\n";
    heads.put("runout", runout);
    heads.put(
        "runout, stations and clampings",
        runout + "intended: {reading: div, stations: [5 mm, 20 mm], clampings: 3}\n");
    heads.put(
        "runout, clocked",
        runout
            + "intended: {positions: 6, collet: [0 deg, 90 deg, 180 deg],"
            + " shank: [0 deg, 0 deg, 90 deg]}\n");
    heads.put(TURNS, runout + "intended: {positions: 8, turns: 3}\n");
    heads.put("side-load", "trial: side-load\n" + load + "contact: 10 mm\n");
    heads.put(
        "side-load, three ways, newtons",
        "trial: side-load\n"
            + DIAL
            + "contact: 10 mm\nintended: {loads: [0 N, 10 N, 20 N], directions: [0 deg, 120 deg,"
            + " 240 deg], repeats: 2}\n");
    heads.put(
        BODIES,
        "trial: side-load\n"
            + load
            + "contact: 10 mm\nbody: {diameter: 3 mm, modulus: 580 GPa}\n"
            + "intended: {counts: [0, 2, 4], places: [shank 10 mm, shank 20 mm,"
            + " nut -1 mm, nut -12 mm, housing -20 mm]}\n");
    heads.put(
        "side-load, distances",
        "trial: side-load\n" + load + "intended: {counts: [0, 2], contacts: [10 mm, 25 mm]}\n");
    heads.put("axial", "trial: axial\n" + load);
    heads.put(
        "growth",
        "trial: growth\n" + DIAL + "intended: {for: 20 min, every: 2 min, reading: um}\n");
    heads.put(
        "speed", "trial: speed\nsetup: Heron 3 mm\nintended: {settings: [20 %, 40 %, 60 %]}\n");
    heads.put("speed, any", "trial: speed\nsetup: Heron 3 mm\n");
    heads.put("inspection", "trial: inspection\nsetup: Heron 3 mm\n");
    return heads;
  }

  private static String head(String kind) {
    return Objects.requireNonNull(HEADS.get(kind), kind);
  }

  static Set<String> kinds() {
    return HEADS.keySet();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void leadsToATrialThatIsReduced(String kind) {
    Taken taken = new Taken(head(kind), 7);
    taken.follow();
    assertThat(taken.guidance().done()).isEqualTo(taken.guidance().intended()).isPositive();
    assertThat(taken.reduce().figures()).isNotNull();
  }

  @Test
  void aDialThatGoesFromBodyToBodyTellsTheirJoints() {
    Taken taken = new Taken(head(BODIES), 5);
    taken.follow();
    assertThat(((SideLoad) taken.reduce()).compliances().shares().entries())
        .extracting(Shares.Share::joint)
        .contains("collet");
  }

  @Test
  void turnsReadOnTellMotionInStepFromMotionOutOfIt() {
    Taken taken = new Taken(head(TURNS), 5);
    taken.follow();
    assertThat(taken.guidance().done()).isEqualTo(25);
    assertThat(asynchronous(taken).known()).isTrue();
    Taken once = new Taken(head("runout"), 5);
    once.follow();
    assertThat(asynchronous(once).known()).isFalse();
  }

  private static Figure asynchronous(Taken taken) {
    return ((Runout) taken.reduce()).stations().get(0).form().asynchronous();
  }

  /** Rows off the plan and strikes lead nowhere else, and the guide comes to an end. */
  @ParameterizedTest
  @MethodSource("kinds")
  void standsStrikesAndRowsOffThePlan(String kind) {
    for (long seed = 1; seed <= 12; seed++) {
      Taken taken = new Taken(head(kind), seed);
      taken.followBadly();
      taken.follow();
      assertThat(taken.guidance().step()).isEmpty();
      assertThat(taken.reduce()).isNotNull();
    }
  }

  @Test
  void asksAgainWhatWasStruckOut() {
    Taken taken = new Taken(head("runout"), 3);
    taken.take();
    Step second = taken.guidance().step().orElseThrow();
    taken.take();
    taken.strike(1);
    assertThat(taken.guidance().step()).contains(second);
  }

  /**
   * Says enough where four more readings were seen to change the doubt by less than a tenth, of as
   * many sweeps as come true; where they were seen to help by far more, it does not.
   */
  @Test
  void saysEnoughWhereMoreReadingsHardlyHelped() {
    int agreed = 0;
    int asked = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Taken taken = new Taken(head("runout"), seed);
      taken.scatter = 0.3 + 1.2 * (seed % 6) / 5;
      taken.follow();
      boolean enough = taken.enough();
      double before = uncertainty(taken.reduce());
      for (int i = 0; i < 4; i++) {
        taken.takeMore();
      }
      double gain = 1 - uncertainty(taken.reduce()) / before;
      if (Math.abs(gain - 0.1) > 0.05) {
        asked++;
        agreed += enough == gain < 0.1 ? 1 : 0;
      }
    }
    assertThat(asked).isGreaterThan(20);
    assertThat(agreed / (double) asked).isGreaterThan(0.6);
  }

  /** Readings on other bodies do not better the stiffness, so they do not make it enough. */
  @Test
  void countsOnlyReadingsThatTellTheStiffness() {
    Set<Boolean> said = new HashSet<>();
    for (int repeats : List.of(1, 6)) {
      String head = head(BODIES).replace("intended: {", "intended: {repeats: " + repeats + ", ");
      Taken bodies = new Taken(head, repeats);
      Taken shank =
          new Taken(head.replaceFirst("places: \\[.*]", "places: [shank 10 mm]"), repeats);
      bodies.follow();
      shank.follow();
      assertThat(bodies.enough()).as("repeats " + repeats).isEqualTo(shank.enough());
      said.add(shank.enough());
    }
    assertThat(said).containsExactlyInAnyOrder(true, false);
  }

  private static double uncertainty(Reduced reduced) {
    return ((Runout) reduced).stations().get(0).tir().estimate().orElseThrow().u();
  }

  @ParameterizedTest
  @ValueSource(strings = {"cleaned", "nut", "pin", "warm-up", "turned-by"})
  void asksForConditionsUntilTheyAreSaid(String field) {
    Taken silent = new Taken(head("runout"), 1);
    assertThat(silent.guidance().ask()).extracting(s -> s.about()).contains(field);
    String word = field.equals("turned-by") ? "hand" : field.equals("warm-up") ? "5 min" : "yes";
    Taken said = new Taken(head("runout") + "conditions: {" + field + ": " + word + "}\n", 1);
    assertThat(said.guidance().ask()).extracting(s -> s.about()).doesNotContain(field);
  }

  /** A trial that is being taken by a hand with a seed. */
  private static final class Taken {
    private final String head;
    private final Random hand;
    private final List<Kept.Reading> rows = new ArrayList<>();
    private double scatter = 0.3;

    Taken(String head, long seed) {
      this.head = head;
      this.hand = new Random(seed);
    }

    void follow() {
      for (int i = 0; guidance().step().isPresent(); i++) {
        assertThat(i).isLessThan(MOST_STEPS);
        take();
      }
    }

    /** Some steps, some strikes, some rows off the plan. */
    void followBadly() {
      for (int i = 0; i < 10; i++) {
        if (hand.nextInt(4) == 0 && !rows.isEmpty()) {
          strike(hand.nextInt(rows.size()));
        } else if (hand.nextInt(5) == 0 && !rows.isEmpty() && head.contains("runout")) {
          takeMore();
        } else if (guidance().step().isPresent()) {
          take();
        }
      }
    }

    /** What follows is what was ahead. */
    void take() {
      List<Step> ahead = guidance().ahead();
      take(ahead.get(0));
      assertThat(guidance().ahead())
          .startsWith(ahead.subList(1, ahead.size()).toArray(Step[]::new));
    }

    void takeMore() {
      take(guidance().more());
    }

    private void take(Step step) {
      List<TypedReading.Cell> cells = new ArrayList<>();
      step.given().forEach(g -> cells.add(new TypedReading.Cell(g.column(), g.text())));
      step.asked().forEach(a -> cells.add(new TypedReading.Cell(a.column(), answer(a, step))));
      rows.add(
          new Kept.Reading(
              rows.size() + 1,
              new TypedReading("k" + rows.size(), cells),
              java.time.Instant.EPOCH,
              Optional.empty()));
    }

    private String answer(Asked asked, Step step) {
      if (!asked.choices().isEmpty()) {
        return asked.choices().get(0);
      }
      if (asked.kind() == Asked.Kind.TEXT) {
        return "";
      }
      long steps = Math.round(truth(asked, step) + scatter * hand.nextGaussian());
      return Long.toString(asked.column().equals("reading_um") ? 10 * steps : steps);
    }

    /** In divisions of the dial; a speed that rises with its setting. */
    private double truth(Asked asked, Step step) {
      double first = step.given().stream().mapToDouble(g -> number(g.text())).sum();
      return switch (asked.column()) {
        case "speed_rpm" -> 4000 + 200 * (first + rows.size());
        case "power_W" -> 40;
        case "temperature_degC" -> 20 + first / 10;
        case "setting" -> 1 + rows.size();
        default -> head.contains("runout") ? 3 * Math.cos(Math.toRadians(first)) : pushed(step);
      };
    }

    /** A nose that gives way less the farther in it is touched. */
    private static double pushed(Step step) {
      Map<String, String> given = new LinkedHashMap<>();
      step.given().forEach(g -> given.put(g.column(), g.text()));
      double load = given(given, "count") + given(given, "load_N") / 7;
      boolean back = "pull".equals(given.get("direction"));
      double along = back ? -1 : Math.cos(Math.toRadians(given(given, "direction_deg")));
      return along * load * (1.5 + given(given, "at_mm") / 50);
    }

    private static double given(Map<String, String> cells, String column) {
      return number(cells.getOrDefault(column, "0"));
    }

    private static double number(String text) {
      return text.matches("-?[\\d.]+") ? Double.parseDouble(text) : 0;
    }

    void strike(int row) {
      Kept.Reading one = rows.get(row);
      rows.set(
          row,
          new Kept.Reading(
              one.position(),
              one.typed(),
              one.at(),
              Optional.of(new Kept.Strike("misread", one.at()))));
    }

    Trial trial() {
      Map<String, byte[]> files = new LinkedHashMap<>();
      String path = "trials/taken.yaml";
      boolean any = !rows.isEmpty();
      files.put(path, (head + (any ? "readings: taken.csv\n" : "")).getBytes());
      if (any) {
        files.put("trials/taken.csv", KeptTable.of(rows).write(DOCUMENTS).getBytes());
      }
      return DOCUMENTS.trial(BenchContents.of(files), path);
    }

    Reduced reduce() {
      return Reduction.of(trial(), Optional.of(BENCH), Draws.DEFAULT, Work.sequential());
    }

    /** Every row so far can be read, whatever it tells yet. */
    Guidance guidance() {
      try {
        Reduction.read(trial(), Optional.of(BENCH));
      } catch (Refused notYet) {
        assertThat(Unfinished.is(notYet)).as(notYet.saying().code()).isTrue();
      }
      return Guide.next(trial(), Optional.empty());
    }

    boolean enough() {
      return Guide.next(trial(), Optional.of(reduce())).enough().isPresent();
    }
  }
}
