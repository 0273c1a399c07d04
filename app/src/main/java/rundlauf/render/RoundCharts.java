package rundlauf.render;

import static rundlauf.render.ChartNumbers.number;
import static rundlauf.render.ChartNumbers.row;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import rundlauf.report.ClockingDial;
import rundlauf.report.ComplianceRose;
import rundlauf.report.MarkRing;
import rundlauf.report.RoundnessCircles;
import rundlauf.report.Scale;

/** Data of the drawings that go round a centre and are not readings. */
final class RoundCharts {
  private final Wording words;

  RoundCharts(Wording words) {
    this.words = words;
  }

  void clocking(ObjectNode node, ClockingDial chart) {
    node.put("unit", FigureText.symbol(chart.length().unit()));
    node.put("clockwise", chart.clockwise());
    node.set("span", number(chart.span(), chart.length()));
    node.set("within", number(chart.within(), chart.length()));
    marks(node, chart.marks(), chart.angle());
    ArrayNode arrows = node.putArray("arrows");
    chart.arrows().forEach(a -> arrow(arrows.addObject(), a, chart));
    arrow(node.putObject("together"), chart.together(), chart);
  }

  ObjectNode ring(MarkRing ring) {
    ObjectNode node = ChartNumbers.NODES.objectNode().put("id", ring.id()).put("kind", "ring");
    node.put("clockwise", ring.clockwise());
    marks(node, ring.marks(), ring.angle());
    return node;
  }

  private void marks(ObjectNode node, List<ClockingDial.Mark> all, Scale angle) {
    ArrayNode marks = node.putArray("marks");
    for (ClockingDial.Mark mark : all) {
      ObjectNode one = marks.addObject().put("part", code(mark.part()));
      one.put("name", words.say(mark.name())).set("angle", number(mark.angle(), angle));
    }
  }

  private void arrow(ObjectNode one, ClockingDial.Arrow arrow, ClockingDial chart) {
    one.put("name", words.say(arrow.name())).put("told", arrow.told());
    one.set("length", number(arrow.length(), chart.length()));
    one.set("angle", number(arrow.angle(), chart.angle()));
    arrow
        .region()
        .ifPresent(
            r -> {
              one.set("lengths", row(r.lengths(), finer(chart.length())));
              one.set("angles", row(r.angles(), finer(chart.angle())));
            });
  }

  void roundness(ObjectNode node, RoundnessCircles chart) {
    node.put("unit", FigureText.symbol(chart.length().unit()));
    node.set("span", number(chart.span(), finer(chart.length())));
    node.set("angles", row(chart.angles(), chart.angle()));
    node.set("profile", row(chart.profile(), finer(chart.length())));
    ArrayNode circles = node.putArray("circles");
    for (RoundnessCircles.Line line : chart.circles()) {
      ObjectNode one = circles.addObject().put("kind", code(line.kind()));
      one.put("name", words.say(line.name()));
      one.set("heights", row(line.heights(), finer(chart.length())));
      one.set("along", number(line.along(), chart.length()));
      one.set("across", number(line.across(), chart.length()));
    }
  }

  void rose(ObjectNode node, ComplianceRose chart) {
    node.put("unit", FigureText.symbol(chart.compliance().unit()));
    node.set("span", number(chart.span(), chart.compliance()));
    node.set("angles", row(chart.angles(), chart.angle()));
    node.set("curve", row(chart.curve(), chart.compliance()));
    node.set("low", row(chart.low(), chart.compliance()));
    node.set("high", row(chart.high(), chart.compliance()));
    ArrayNode axes = node.putArray("axes");
    for (ComplianceRose.Axis axis : chart.axes()) {
      ObjectNode one = axes.addObject().put("name", words.say(axis.name()));
      one.set("angle", number(axis.angle(), chart.angle()));
      one.set("from", number(axis.from(), chart.angle()));
      one.set("to", number(axis.to(), chart.angle()));
      one.set("compliance", number(axis.compliance(), chart.compliance()));
    }
    ArrayNode pushes = node.putArray("pushes");
    for (ComplianceRose.Push push : chart.pushes()) {
      ObjectNode one = pushes.addObject();
      one.set("angle", number(push.angle(), chart.angle()));
      one.set("compliance", number(push.compliance(), chart.compliance()));
      one.set("low", number(push.low(), chart.compliance()));
      one.set("high", number(push.high(), chart.compliance()));
    }
  }

  /** A drawn line needs more digits than a table shows. */
  private static Scale finer(Scale scale) {
    return new Scale(scale.unit(), scale.decimals() + 2);
  }

  private static String code(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
