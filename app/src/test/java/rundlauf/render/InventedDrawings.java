package rundlauf.render;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.Form;
import rundlauf.reduce.runout.FormCircles;
import rundlauf.reduce.sideload.Compliances;
import rundlauf.reduce.sideload.Shares;

/** What the drawings of a report are made from, written by hand; every number is invented. */
final class InventedDrawings {
  private static final int DRAWS = 500;

  private InventedDrawings() {}

  static BestClocking clocking() {
    return new BestClocking(
        OptionalDouble.of(0.02),
        OptionalDouble.of(Math.toRadians(135)),
        OptionalDouble.of(Math.toRadians(48)),
        InventedResults.length("b", 21, 2, 8),
        InventedResults.length("b", 94, 4, 8),
        new BestClocking.Marks(OptionalDouble.of(0), OptionalDouble.of(0)),
        List.of(
            standing("spindle", 12, 40, 0),
            standing("collet", 31, 20, 135),
            standing("shank", 4, 310, 48)));
  }

  private static BestClocking.Standing standing(
      String part, double um, double highSpot, double clock) {
    return new BestClocking.Standing(part, vector(um, highSpot), vector(um, highSpot - clock));
  }

  private static DrawnVector vector(double um, double highSpot) {
    Stream stream = Stream.of(9, um + " " + highSpot);
    double a = um * Math.cos(Math.toRadians(highSpot));
    double b = um * Math.sin(Math.toRadians(highSpot));
    return new DrawnVector(
        stream.gaussians(DRAWS).map(x -> (a + 3 * x) * 1e-6),
        stream.gaussians(DRAWS).map(x -> (b + 2 * x) * 1e-6),
        new LinkedHashMap<>());
  }

  /** A form of two and three lobes about a pin of 3 mm. */
  static Form form() {
    Missing none = new Missing(Unit.MICROMETRE, Saying.of("one-turn-only", ""));
    var width = InventedResults.length("f", 9, 1, 1);
    Samples profile =
        Samples.generate(
            120,
            p ->
                4e-6 * Math.cos(3 * FormCircles.angle(p, 120))
                    + 2e-6 * Math.sin(2 * FormCircles.angle(p, 120)));
    var circles = Optional.of(FormCircles.of(profile, 1.5e-3));
    return new Form(width, width, width, width, none, none, circles);
  }

  static Compliances compliances() {
    return new Compliances(
        axis(35, 0.31),
        axis(125, 0.52),
        List.of(),
        List.of(),
        shares(),
        List.of(Saying.of("side-load-no-contact", "")),
        List.of(push(0, 2.8), push(60, 3.0), push(120, 1.95)));
  }

  private static Shares shares() {
    return new Shares(
        List.of(
            share("shank", 0.16, Optional.empty()),
            share("collet+bearings", 0.31, Optional.of(Shares.Bound.AT_LEAST)),
            share("mount", 0.53, Optional.of(Shares.Bound.AT_MOST))),
        List.of());
  }

  private static Shares.Share share(String joint, double share, Optional<Shares.Bound> bound) {
    return new Shares.Share(
        joint,
        drawn(share * 3e-6, 1e-7, Unit.MICROMETRE_PER_NEWTON),
        drawn(share, 0.03, Unit.ONE),
        bound);
  }

  private static Compliances.Axis axis(double degrees, double stiffness) {
    return new Compliances.Axis(
        drawn(Math.toRadians(degrees), 0.07, Unit.DEGREE),
        drawn(stiffness * 1e6, 8e3, Unit.NEWTON_PER_MICROMETRE));
  }

  private static Compliances.Push push(double degrees, double umPerNewton) {
    double direction = Math.toRadians(degrees);
    return new Compliances.Push(
        direction, direction, drawn(umPerNewton * 1e-6, 8e-8, Unit.MICROMETRE_PER_NEWTON));
  }

  private static Drawn drawn(double value, double u, Unit unit) {
    Stream stream = Stream.of(4, unit + " " + value);
    return Drawn.of(unit, stream.gaussians(DRAWS).map(x -> value + u * x), Map.of());
  }
}
