package rundlauf.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import rundlauf.Invented;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Saying;
import rundlauf.reduce.Reduced;

/** Every key that the output promises is there, and every figure says how sure it is or why not. */
class ResultDocumentTest {
  private static JsonNode read(Reduced result) throws Exception {
    String line = ResultDocument.of(result, Invented::spelled);
    assertThat(line).doesNotContain("\n");
    return new ObjectMapper().readTree(line);
  }

  private static List<String> keys(JsonNode node) {
    return node.propertyStream().map(java.util.Map.Entry::getKey).toList();
  }

  @Test
  void aRunoutTrialHasEveryKeyInItsOrder() throws Exception {
    JsonNode root = read(Invented.runout());
    assertThat(keys(root))
        .containsExactly(
            "file",
            "trial",
            "title",
            "date",
            "setup",
            "stations",
            "axis",
            "parts",
            "clampingScatter",
            "bestClocking",
            "nextClamping",
            "verdicts",
            "budget",
            "cautions",
            "advice");
    assertThat(keys(root.get("stations").get(0)))
        .containsExactly(
            "station_mm",
            "clamping",
            "collet_deg",
            "shank_deg",
            "readings",
            "swing",
            "tir",
            "eccentricity",
            "highSpot",
            "harmonics",
            "scatter",
            "synchronous",
            "asynchronous",
            "roundness");
    assertThat(keys(root.at("/stations/0/roundness"))).containsExactly("lsc", "mzc", "mcc", "mic");
    assertThat(keys(root.get("bestClocking")))
        .containsExactly("station_mm", "collet_deg", "shank_deg", "tir", "insteadOf", "why");
    assertThat(keys(root.at("/axis/tip")))
        .containsExactly("distance_mm", "tir", "eccentricity", "highSpot");
  }

  @Test
  void aFigureStandsInItsUnitWithItsInterval() throws Exception {
    JsonNode tir = read(Invented.runout()).at("/stations/0/tir");
    assertThat(keys(tir)).containsExactly("value", "unit", "u", "low", "high", "level", "dof");
    assertThat(tir.get("value").doubleValue()).isEqualTo(58, within(1e-9));
    assertThat(tir.get("unit").textValue()).isEqualTo("um");
    // source: JCGM 100:2008, 5.1.2 (10): sqrt(4.6² + 2.5²)
    assertThat(tir.get("u").doubleValue()).isEqualTo(5.2354560450833695, within(1e-9));
    assertThat(tir.get("level").doubleValue()).isEqualTo(0.95);
    // source: JCGM 100:2008, G.4.1 (G.2b): u⁴ / (2.5⁴ / 5), the dial's doubt having no dof
    assertThat(tir.get("dof").doubleValue()).isEqualTo(96.1673, within(1e-3));
  }

  @Test
  void whatHasNoDoubtHasAnIntervalWithoutWidth() throws Exception {
    JsonNode swing = read(Invented.runout()).at("/stations/0/swing");
    assertThat(swing.get("u").doubleValue()).isZero();
    assertThat(swing.get("low")).isEqualTo(swing.get("value")).isEqualTo(swing.get("high"));
    assertThat(swing.has("dof")).isFalse();
  }

  @Test
  void anAngleLiesInTheFirstTurnAndItsIntervalDoesNotJump() throws Exception {
    JsonNode spot = read(Invented.runout()).at("/stations/0/highSpot");
    assertThat(spot.get("value").doubleValue()).isEqualTo(355, within(1e-9));
    assertThat(spot.get("low").doubleValue()).isBetween(340.0, 350.0);
    assertThat(spot.get("high").doubleValue()).isBetween(360.0, 370.0);
  }

  @Test
  void whatCannotBeHadIsNullWithWhy() throws Exception {
    JsonNode tilt = read(Invented.runout()).at("/axis/tilt");
    assertThat(tilt.toString())
        .isEqualTo("{\"value\":null,\"unit\":\"um/mm\",\"why\":\"<one-station-only>\"}");
  }

  @Test
  void bareNumbersCarryTheirUnitInTheKey() throws Exception {
    JsonNode station = read(Invented.runout()).at("/stations/0");
    assertThat(station.get("station_mm").doubleValue()).isEqualTo(5);
    assertThat(station.get("shank_deg").doubleValue()).isEqualTo(90);
    assertThat(station.get("collet_deg").isNull()).isTrue();
    assertThat(station.get("readings").intValue()).isEqualTo(8);
  }

  @Test
  void theBudgetNamesEachCauseWithItsShare() throws Exception {
    JsonNode first = read(Invented.runout()).at("/budget/0");
    assertThat(keys(first)).containsExactly("of", "cause", "text", "u", "unit", "share");
    assertThat(first.get("of").textValue()).isEqualTo("stations[0].tir");
    assertThat(first.get("cause").textValue()).isEqualTo("indicator/plunger dial/limit-of-error");
    assertThat(first.get("text").textValue()).isEqualTo("<term.limit-of-error>");
    assertThat(first.get("u").doubleValue()).isEqualTo(4.6, within(1e-9));
    assertThat(first.get("share").doubleValue()).isEqualTo(4.6 * 4.6 / 27.41, within(1e-9));
  }

  @Test
  void partsAndTheBestClockAnglesAreWritten() throws Exception {
    JsonNode root = read(Invented.clocked());
    JsonNode collet = root.at("/parts/1");
    assertThat(keys(collet)).containsExactly("part", "station_mm", "eccentricity", "highSpot");
    assertThat(collet.get("part").textValue()).isEqualTo("collet");
    assertThat(collet.at("/eccentricity/value").doubleValue()).isEqualTo(20, within(1e-9));
    assertThat(root.at("/parts/0/highSpot/why").textValue()).isEqualTo("<direction-lost>");
    JsonNode best = root.get("bestClocking");
    assertThat(keys(best))
        .containsExactly("station_mm", "collet_deg", "shank_deg", "tir", "insteadOf");
    assertThat(best.get("collet_deg").doubleValue()).isEqualTo(130, within(1e-9));
    assertThat(best.get("shank_deg").isNull()).isTrue();
    assertThat(best.at("/insteadOf/value").doubleValue()).isEqualTo(58, within(1e-9));
  }

  @Test
  void noBestClockAnglesSayWhy() throws Exception {
    JsonNode best = read(Invented.runout()).get("bestClocking");
    assertThat(best.get("why").textValue()).isEqualTo("<parts-not-told-apart>");
    assertThat(best.at("/tir/value").isNull()).isTrue();
  }

  @Test
  void aSideLoadTrialHasEveryKey() throws Exception {
    JsonNode root = read(Invented.sideLoad());
    assertThat(keys(root))
        .containsExactly(
            "file",
            "trial",
            "title",
            "date",
            "setup",
            "stiffness",
            "compliance",
            "play",
            "hysteresis",
            "straightness",
            "shank",
            "setupStiffness",
            "directions",
            "shares",
            "reach",
            "budget",
            "cautions",
            "advice");
    assertThat(root.at("/stiffness/value").doubleValue()).isEqualTo(0.31, within(1e-12));
    assertThat(root.at("/stiffness/unit").textValue()).isEqualTo("N/um");
    assertThat(root.at("/straightness/f").doubleValue()).isEqualTo(1.7);
    assertThat(root.at("/shank/compliance/why").textValue()).isEqualTo("<no-body>");
    assertThat(root.at("/directions/soft/angle/value").isNull()).isTrue();
    assertThat(root.at("/cautions/0/code").textValue()).isEqualTo("play-felt");
  }

  @Test
  void aSpeedTrialHasEveryKey() throws Exception {
    JsonNode root = read(Invented.speed());
    assertThat(keys(root))
        .containsExactly(
            "file",
            "trial",
            "title",
            "date",
            "setup",
            "settingUnit",
            "curve",
            "usable",
            "settingFor",
            "droop",
            "deadBelow",
            "saturatesAbove",
            "budget",
            "cautions",
            "advice");
    assertThat(root.at("/usable/min/value").doubleValue()).isEqualTo(6000, within(1e-9));
    assertThat(root.at("/usable/min/unit").textValue()).isEqualTo("rpm");
    assertThat(root.at("/settingFor/0/rpm").doubleValue()).isEqualTo(12000, within(1e-9));
    assertThat(root.at("/settingFor/0/setting/value").doubleValue()).isEqualTo(40, within(1e-9));
  }

  @Test
  void anInspectionSaysWhetherItHoldsAndWhy() throws Exception {
    JsonNode root = read(Invented.inspection());
    assertThat(root.get("hold").booleanValue()).isTrue();
    assertThat(root.at("/because/0/text").textValue()).isEqualTo("<item-fault earth-bond>");
    assertThat(root.at("/items/0").toString())
        .isEqualTo(
            "{\"item\":\"earth-bond\",\"state\":\"fault\",\"value\":\"4 ohm\",\"note\":null}");
  }

  @Test
  void theDigitsDoNotDependOnTheLocale() {
    String here = ResultDocument.of(Invented.runout(), Invented::spelled);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(ResultDocument.of(Invented.runout(), Invented::spelled)).isEqualTo(here);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aNumberThatJsonDoesNotKnowIsNeverWritten() {
    assertThatThrownBy(() -> JsonLine.of(Invented::spelled, json -> json.number("tir", Double.NaN)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("tir is NaN: JSON has no such number");
  }

  @Test
  void aRefusalSaysWhereAndWhatToDo() {
    var saying = Saying.of("unknown-unit", "indicator.division", Arg.of("mn"));
    var place = new Place("trials/heron.yaml", 3, 24, "indicator.division");
    assertThat(RefusalDocument.of("trials/heron.yaml", saying, place, Invented::spelled))
        .isEqualTo(
            "{\"file\":\"trials/heron.yaml\",\"error\":{\"code\":\"unknown-unit\","
                + "\"text\":\"<unknown-unit mn>\",\"remedy\":\"<unknown-unit.remedy mn>\","
                + "\"line\":3,\"column\":24,\"field\":\"indicator.division\"}}");
  }

  @Test
  void aRefusalOfAnotherFileNamesIt() {
    var saying = Saying.of("undefined-name", "setup");
    var place = new Place("bench.yaml", 0, 0, "");
    assertThat(RefusalDocument.of("trials/heron.yaml", saying, place, Invented::spelled))
        .contains("\"in\":\"bench.yaml\",\"line\":null,\"column\":null,\"field\":\"\"");
  }
}
