package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Polar;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.BestClocking.Standing;
import rundlauf.report.ClockingDial.Arrow;
import rundlauf.report.ClockingDial.Mark;
import rundlauf.report.ClockingDial.Part;
import rundlauf.report.ClockingDial.Region;

/** Two dials: the parts as they were first clamped, and set best. */
final class ClockingDials {
  static final Scale ANGLE = new Scale(Unit.DEGREE, 0);
  private static final Scale LENGTH = new Scale(Unit.MICROMETRE, 1);
  private static final double TURN = 2 * Math.PI;

  private ClockingDials() {}

  /** Nothing where no clocking is known. */
  static List<Chart> of(Sheet sheet, BestClocking best) {
    if (!best.tir().known() || best.standings().isEmpty()) {
      return List.of();
    }
    var setMarks = new BestClocking.Marks(best.collet(), best.shank());
    Dial first = Dial.of(best, Standing::asClamped, best.first(), best.insteadOf());
    Dial set = Dial.of(best, Standing::set, setMarks, best.tir());
    double span = PolarCharts.roundUp(Math.max(first.largest(), set.largest()));
    return List.of(
        first.chart(sheet, "first", best.station(), span),
        set.chart(sheet, "set", best.station(), span));
  }

  /** One way in which the parts stand. */
  private record Dial(List<Mark> marks, List<Arrow> arrows, Arrow together, double within) {
    static Dial of(
        BestClocking best,
        Function<Standing, DrawnVector> standing,
        BestClocking.Marks marks,
        Figure tir) {
      List<Arrow> arrows = new ArrayList<>();
      DrawnVector sum = standing.apply(best.standings().get(0)).times(0);
      for (Standing one : best.standings()) {
        DrawnVector e = standing.apply(one);
        arrows.add(arrow(Saying.of("report-part", "", Arg.of(one.part())), e, true));
        sum = sum.plus(e, 1);
      }
      double within = tir.estimate().orElseThrow().interval().high() / 2;
      return new Dial(
          ClockingDials.marks(marks),
          arrows,
          arrow(Saying.of("report-clocking-together", ""), sum, false),
          within);
    }

    double largest() {
      double largest = Math.max(within, together.length());
      for (Arrow arrow : arrows) {
        largest = Math.max(largest, arrow.length());
        largest = Math.max(largest, arrow.region().orElseThrow().lengths().max());
      }
      return largest;
    }

    Chart chart(Sheet sheet, String name, OptionalDouble station, double span) {
      Saying caption =
          station.isPresent()
              ? Saying.of(
                  "report-clocking-" + name + "-at",
                  "",
                  Arg.of(station.getAsDouble(), Unit.MILLIMETRE))
              : Saying.of("report-clocking-" + name, "");
      return new ClockingDial(
          sheet.chart("clocking-" + name),
          caption,
          summary(),
          sheet.forwardIsClockwise(),
          ANGLE,
          LENGTH,
          marks,
          arrows,
          together,
          within,
          span,
          ClockingTwin.of(caption, this.marks, arrows, together, within, LENGTH));
    }

    private Saying summary() {
      Arg length = Arg.about(2 * together.length(), Unit.MICROMETRE);
      return together.told()
          ? Saying.of(
              "report-clocking-summary", "", length, Arg.about(together.angle(), Unit.DEGREE))
          : Saying.of("report-clocking-summary-untold", "", length);
    }
  }

  static List<Mark> marks(BestClocking.Marks at) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark(Part.SPINDLE, Saying.of("report-mark-spindle", ""), 0));
    at.collet()
        .ifPresent(c -> marks.add(new Mark(Part.COLLET, Saying.of("report-mark-collet", ""), c)));
    at.shank()
        .ifPresent(c -> marks.add(new Mark(Part.SHANK, Saying.of("report-mark-shank", ""), c)));
    return marks;
  }

  /**
   * What reads highest at spindle angle φ faces the dial then: it stands φ behind the mark, and so
   * −φ forward of it.
   */
  private static Arrow arrow(Saying name, DrawnVector e, boolean withRegion) {
    Drawn length = Polar.magnitude(e, Unit.MICROMETRE);
    Optional<Region> region = withRegion ? Optional.of(region(e)) : Optional.empty();
    return new Arrow(name, length.value(), forward(e.direction()), Polar.zeroExcluded(e), region);
  }

  private static Region region(DrawnVector e) {
    DoubtRegion ellipse = DoubtRegion.of(e);
    int n = ellipse.a().size();
    return new Region(
        Samples.generate(n, i -> Math.hypot(ellipse.a().get(i), ellipse.b().get(i))),
        Samples.generate(n, i -> forward(Math.atan2(ellipse.b().get(i), ellipse.a().get(i)))));
  }

  private static double forward(double highSpot) {
    return -highSpot - TURN * Math.floor(-highSpot / TURN);
  }
}
