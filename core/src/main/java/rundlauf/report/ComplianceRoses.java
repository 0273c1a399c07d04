package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.sideload.Compliances;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.report.ComplianceRose.Push;
import rundlauf.report.Table.Row;

/** The compliance along a push by its direction, {@code u · C u}, from its two axes. */
final class ComplianceRoses {
  private static final int GRID = 72;

  /** The twin has a row every 15 degrees. */
  private static final int STEP = 3;

  private static final double TURN = 2 * Math.PI;
  private static final double TAIL = (1 - Interval.LEVEL) / 2;
  private static final Scale ANGLE = new Scale(Unit.DEGREE, 0);

  /** A dial this near to the push's line tells the compliance along it: cosine within 0.4 %. */
  private static final double ALONG = Math.toRadians(5);

  private ComplianceRoses() {}

  /** Empty where the axes are not known. */
  static Optional<Chart> of(Sheet sheet, SideLoad load) {
    Compliances found = load.compliances();
    if (found.soft().stiffness() instanceof Drawn soft
        && found.stiff().stiffness() instanceof Drawn stiff
        && found.soft().angle() instanceof Drawn angle) {
      return Optional.of(chart(sheet, load, new Axes(soft, stiff, angle)));
    }
    return Optional.empty();
  }

  /** Both axes by their draws; draw i of each belongs to one state of the nose. */
  private record Axes(Drawn soft, Drawn stiff, Drawn angle) {
    double at(double direction) {
      return mixed(soft.value(), stiff.value(), direction - angle.value());
    }

    double quantile(double direction, double p) {
      Draws all = new Draws(0, soft.weights().size());
      Samples s = soft.draws(all);
      Samples t = stiff.draws(all);
      Samples a = angle.draws(all);
      Samples draws =
          Samples.generate(s.size(), i -> mixed(s.get(i), t.get(i), direction - a.get(i)));
      return WeightedSamples.of(draws).quantile(p);
    }

    private static double mixed(double soft, double stiff, double off) {
      double along = Math.cos(off) * Math.cos(off);
      return along / soft + (1 - along) / stiff;
    }
  }

  private static Chart chart(Sheet sheet, SideLoad load, Axes axes) {
    Samples angles = Samples.generate(GRID + 1, i -> TURN * i / GRID);
    Samples curve = angles.map(axes::at);
    Samples low = angles.map(a -> axes.quantile(a, TAIL));
    Samples high = angles.map(a -> axes.quantile(a, 1 - TAIL));
    Scale scale = Scale.threeDigits(Unit.MICROMETRE_PER_NEWTON, high);
    List<Push> pushes = pushes(load);
    double most = pushes.stream().mapToDouble(Push::high).max().orElse(0);
    Saying caption = Saying.of("report-rose", "");
    return new ComplianceRose(
        sheet.chart("rose"),
        caption,
        summary(load.compliances()),
        ANGLE,
        scale,
        angles,
        curve,
        low,
        high,
        List.of(
            axis("report-rose-soft", load.compliances().soft()),
            axis("report-rose-stiff", load.compliances().stiff())),
        pushes,
        PolarCharts.roundUp(Math.max(high.max(), most)),
        twin(caption, new Samples[] {angles, curve, low, high}, pushes, scale));
  }

  private static ComplianceRose.Axis axis(String name, Compliances.Axis axis) {
    Figure.Estimate angle = axis.angle().estimate().orElseThrow();
    return new ComplianceRose.Axis(
        Saying.of(name, ""),
        angle.value(),
        angle.interval().low(),
        angle.interval().high(),
        1 / axis.stiffness().value());
  }

  private static Saying summary(Compliances found) {
    return Saying.of(
        "report-rose-summary",
        "",
        Arg.about(found.soft().angle().value(), Unit.DEGREE),
        Arg.about(found.soft().stiffness().value(), Unit.NEWTON_PER_MICROMETRE),
        Arg.about(found.stiff().angle().value(), Unit.DEGREE),
        Arg.about(found.stiff().stiffness().value(), Unit.NEWTON_PER_MICROMETRE));
  }

  /** Those whose dial stood along the push. */
  private static List<Push> pushes(SideLoad load) {
    List<Push> pushes = new ArrayList<>();
    for (Compliances.Push push : load.compliances().pushes()) {
      if (Math.abs(Math.IEEEremainder(push.direction() - push.dial(), Math.PI)) <= ALONG) {
        Figure.Estimate read = push.compliance().estimate().orElseThrow();
        Interval interval = read.interval();
        pushes.add(new Push(push.direction(), read.value(), interval.low(), interval.high()));
      }
    }
    return pushes;
  }

  private static Table twin(Saying caption, Samples[] rows, List<Push> pushes, Scale scale) {
    List<Row> table = new ArrayList<>();
    for (Push push : pushes) {
      table.add(
          Row.of(
              new Cell.Number(push.angle(), ANGLE),
              new Cell.Number(push.compliance(), scale),
              new Cell.Blank(),
              new Cell.Number(push.low(), scale),
              new Cell.Number(push.high(), scale)));
    }
    for (int i = 0; i < GRID; i += STEP) {
      table.add(
          Row.of(
              new Cell.Number(rows[0].get(i), ANGLE),
              new Cell.Blank(),
              new Cell.Number(rows[1].get(i), scale),
              new Cell.Number(rows[2].get(i), scale),
              new Cell.Number(rows[3].get(i), scale)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("push", "pushed", "compliance", "low", "high")) {
      columns.add(Table.heading("report-column-" + name));
    }
    return Table.of(caption, columns, table, Table.Kind.READINGS);
  }
}
