package rundlauf.render;

import static rundlauf.render.ChartNumbers.NODES;
import static rundlauf.render.ChartNumbers.number;
import static rundlauf.render.ChartNumbers.row;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.sideload.Shares;
import rundlauf.report.Card;
import rundlauf.report.Chart;
import rundlauf.report.ClockingDial;
import rundlauf.report.ComplianceRose;
import rundlauf.report.HistoryChart;
import rundlauf.report.Report;
import rundlauf.report.RoundnessCircles;
import rundlauf.report.Section;
import rundlauf.report.ShareBars;

/** The charts of a report as data for the page's script: the same digits as in their tables. */
final class ChartData {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Wording words;

  private ChartData(Wording words) {
    this.words = words;
  }

  /** A JSON list that is safe inside a script element. */
  static String of(Report report, Wording words) {
    return of(report.sections(), words);
  }

  /** Those of some sections, likewise. */
  static String of(List<Section> sections, Wording words) {
    ArrayNode charts = NODES.arrayNode();
    ChartData data = new ChartData(words);
    sections.forEach(s -> data.add(s, charts));
    try {
      return JSON.writeValueAsString(charts)
          .replace("<", "\\u003c")
          .replace("\u2028", "\\u2028")
          .replace("\u2029", "\\u2029");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("charts that cannot be written", e);
    }
  }

  private void add(Section section, ArrayNode charts) {
    section.blocks().stream()
        .filter(Chart.class::isInstance)
        .forEach(c -> charts.add(node((Chart) c)));
    section.blocks().stream()
        .filter(Card.class::isInstance)
        .forEach(c -> charts.add(new RoundCharts(words).ring(((Card) c).ring())));
    section.parts().forEach(s -> add(s, charts));
  }

  private ObjectNode node(Chart chart) {
    ObjectNode node = NODES.objectNode().put("id", chart.id());
    if (chart instanceof Chart.Polar polar) {
      polar(node.put("kind", "polar"), polar);
    } else if (chart instanceof Chart.LoadLoop loop) {
      load(node.put("kind", "load"), loop);
    } else if (chart instanceof Chart.SpeedCurve curve) {
      speed(node.put("kind", "speed"), curve);
    } else if (chart instanceof Chart.Rise rise) {
      rise(node.put("kind", "rise"), rise);
    } else if (chart instanceof Chart.Budget budget) {
      budget(node.put("kind", "budget"), budget);
    } else if (chart instanceof Chart.Forces forces) {
      forces(node.put("kind", "forces"), forces);
    } else if (chart instanceof Chart.Chips chips) {
      chips(node.put("kind", "chips"), chips);
    } else if (chart instanceof HistoryChart history) {
      history(node.put("kind", "history"), history);
    } else {
      round(node, chart);
    }
    return node;
  }

  private void round(ObjectNode node, Chart chart) {
    RoundCharts round = new RoundCharts(words);
    if (chart instanceof ClockingDial dial) {
      name(node.put("kind", "clocking"), "within");
      round.clocking(node, dial);
    } else if (chart instanceof RoundnessCircles circles) {
      name(node.put("kind", "roundness"), "profile", "zone");
      round.roundness(node, circles);
    } else if (chart instanceof ShareBars bars) {
      shares(node.put("kind", "shares"), bars);
    } else if (chart instanceof ComplianceRose rose) {
      name(node.put("kind", "rose"), "compliance", "band", "pushes");
      round.rose(node, rose);
    }
  }

  private void polar(ObjectNode node, Chart.Polar chart) {
    name(node, "readings", "fit", "band");
    node.put("unit", FigureText.symbol(chart.length().unit()));
    node.set("span", number(chart.span(), chart.length()));
    node.set("angles", row(chart.angles(), chart.angle()));
    node.set("readings", row(chart.readings(), chart.length()));
    node.set("fitAngles", row(chart.fitAngles(), chart.angle()));
    node.set("fit", row(chart.fit(), chart.length()));
    node.set("low", row(chart.low(), chart.length()));
    node.set("high", row(chart.high(), chart.length()));
  }

  private void load(ObjectNode node, Chart.LoadLoop chart) {
    name(node, "load-axis", "reading-axis");
    ArrayNode loops = node.putArray("loops");
    for (Chart.Loop loop : chart.loops()) {
      ObjectNode one = loops.addObject().put("name", words.say(loop.name()));
      one.set("loads", row(loop.loads(), chart.force()));
      one.set("readings", row(loop.readings(), chart.length()));
      ArrayNode falling = one.putArray("falling");
      loop.branches().forEach(b -> falling.add(b == LoadReadings.Branch.DOWN));
    }
    ArrayNode lines = node.putArray("lines");
    for (Chart.Line line : chart.lines()) {
      ObjectNode one = lines.addObject().put("name", words.say(line.name()));
      one.set("loads", row(line.loads(), chart.force()));
      one.set("readings", row(line.readings(), chart.fitted()));
    }
  }

  private void speed(ObjectNode node, Chart.SpeedCurve chart) {
    name(node, "setting-axis", "speed-axis", "readings", "curve", "band", "slowest", "fastest");
    node.put("settingUnit", chart.settingUnit());
    node.set("settings", row(chart.settings(), chart.setting()));
    node.set("readings", row(chart.readings(), chart.speed()));
    node.set("curveSettings", row(chart.curveSettings(), chart.setting()));
    node.set("curve", row(chart.curve(), chart.speed()));
    node.set("low", row(chart.low(), chart.speed()));
    node.set("high", row(chart.high(), chart.speed()));
    chart.usable().ifPresent(u -> node.set("usable", row(u, chart.speed())));
  }

  private void rise(ObjectNode node, Chart.Rise chart) {
    name(node, "time-axis", "reading-axis", "readings", "fit", "band");
    node.set("times", row(chart.times(), chart.time()));
    node.set("readings", row(chart.readings(), chart.length()));
    node.set("curve", row(chart.curve(), chart.fitted()));
    node.set("low", row(chart.low(), chart.fitted()));
    node.set("high", row(chart.high(), chart.fitted()));
  }

  private void budget(ObjectNode node, Chart.Budget chart) {
    name(node, "u-axis");
    node.put("unit", FigureText.symbol(chart.u().unit()));
    ArrayNode bars = node.putArray("bars");
    for (Chart.Bar bar : chart.bars()) {
      ObjectNode one = bars.addObject().put("name", words.say(bar.name()));
      one.set("u", number(bar.u(), chart.u()));
      one.set("share", number(bar.share(), chart.share()));
    }
  }

  private void shares(ObjectNode node, ShareBars chart) {
    name(node, "share-axis", "whole");
    node.put("whole", chart.whole());
    ArrayNode bars = node.putArray("shares");
    for (ShareBars.Bar bar : chart.bars()) {
      ObjectNode one = bars.addObject().put("name", words.say(bar.name()));
      one.put("bound", bar.bound().map(this::bound).orElse(""));
      one.put("least", bar.bound().filter(Shares.Bound.AT_LEAST::equals).isPresent());
      one.set("share", number(bar.share(), chart.share()));
      one.set("low", number(bar.low(), chart.share()));
      one.set("high", number(bar.high(), chart.share()));
    }
  }

  private String bound(Shares.Bound bound) {
    return words.word(bound == Shares.Bound.AT_LEAST ? "bound-at-least" : "bound-at-most");
  }

  private void forces(ObjectNode node, Chart.Forces chart) {
    name(node, "angle-axis", "force-axis");
    node.set("angles", row(chart.angles(), chart.angle()));
    ArrayNode rows = node.putArray("rows");
    for (Chart.Row row : chart.rows()) {
      ObjectNode one = rows.addObject().put("name", words.say(row.name()));
      one.set("forces", row(row.forces(), chart.force()));
    }
  }

  private void chips(ObjectNode node, Chart.Chips chart) {
    name(node, "chip-axis");
    ArrayNode teeth = node.putArray("teeth");
    for (Chart.Tooth tooth : chart.teeth()) {
      ObjectNode one = teeth.addObject().put("name", words.say(tooth.name()));
      one.set("chip", number(tooth.chip(), chart.length()));
      one.set("low", number(tooth.low(), chart.length()));
      one.set("high", number(tooth.high(), chart.length()));
    }
  }

  private void history(ObjectNode node, HistoryChart chart) {
    name(node, "date-axis");
    node.put("unit", FigureText.symbol(chart.value().unit()));
    ArrayNode moments = node.putArray("moments");
    for (HistoryChart.Moment moment : chart.moments()) {
      ObjectNode one = moments.addObject().put("date", moment.date());
      one.set("value", number(moment.value(), chart.value()));
      one.set("low", number(moment.low(), chart.value()));
      one.set("high", number(moment.high(), chart.value()));
    }
  }

  private void name(ObjectNode node, String... names) {
    ObjectNode words = node.putObject("words");
    for (String name : names) {
      words.put(name, this.words.word("report-chart-" + name));
    }
  }
}
