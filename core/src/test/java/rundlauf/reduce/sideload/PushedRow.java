package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Stream;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.simulated.BodyRow;
import rundlauf.simulated.BodyRow.Joint;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Lever;
import rundlauf.simulated.LoadPlan;
import rundlauf.simulated.Nose;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Shank;
import rundlauf.simulated.TakenRow;
import rundlauf.simulated.TakenRow.Spot;

/** Rows of bodies pushed at 10 mm and read at several places. */
final class PushedRow {
  private static final double MM = 1e-3;

  /** Nut, housing and mount at two distances each. */
  static final List<Spot> TWICE =
      List.of(
          new Spot("shank", 10 * MM),
          new Spot("nut", 0),
          new Spot("nut", -12 * MM),
          new Spot("housing", -20 * MM),
          new Spot("housing", -60 * MM),
          new Spot("mount", -45 * MM),
          new Spot("carriage", -95 * MM));

  /** The nut at one only. */
  static final List<Spot> NUT_ONCE = without(TWICE, 2);

  /** Nut and housing at one only. */
  static final List<Spot> BOTH_ONCE = without(NUT_ONCE, 3);

  private static final Lever LEVER = new Lever(0.25, 0.0005, 180 * MM, 0.5 * MM, 60 * MM, 0.5 * MM);
  private static final LoadPlan PLAN = LoadPlan.oneSided(4).andBack().bothWays();

  private PushedRow() {}

  private static List<Spot> without(List<Spot> spots, int one) {
    List<Spot> left = new ArrayList<>(spots);
    left.remove(one);
    return List.copyOf(left);
  }

  static TakenRow taken(Stream stream, List<Spot> spots, double division, double scatter) {
    var row =
        new BodyRow(
            List.of(
                joint(stream, 0.3e-6, 8 * MM),
                joint(stream, 0.8e-6, 40 * MM),
                joint(stream, 0.5e-6, 70 * MM),
                joint(stream, 0.5e-6, 200 * MM)));
    return taken(stream, row, spots, division, scatter);
  }

  /** One joint gives way six times as much as any other. */
  static TakenRow guilty(Stream stream, int which) {
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      joints.add(new Joint((i == which ? 3 : 0.4) * 1e-6, 0, 30 * MM));
    }
    return taken(stream, new BodyRow(joints), TWICE, 10e-6, 1e-6);
  }

  private static TakenRow taken(
      Stream stream, BodyRow row, List<Spot> spots, double division, double scatter) {
    Dial dial = Dial.clean(division).with(Nuisances.clean().withScatter(scatter));
    Shank shank = Shank.clean(3 * MM, 210e9, 10 * MM).gripped(0.75 * MM * 2 * stream.uniform());
    return TakenRow.take(stream, row, shank, Nose.clean(1), LEVER, PLAN, dial, spots);
  }

  /** Up to {@code most} at the load, part of it by shift and the rest by tilt. */
  private static Joint joint(Stream stream, double most, double middle) {
    double all = 2 * most * stream.uniform();
    double tips = stream.uniform();
    double arm = middle + 10 * MM;
    return new Joint(all * (1 - tips), all * tips / (arm * arm), middle);
  }

  /** The same trial with a shank of half the modulus. */
  static LoadReadings halfAsStiff(LoadReadings r) {
    LoadReadings.Body body = r.body().orElseThrow();
    Quantity half = Quantity.exact(body.modulus().si() / 2, Unit.GIGAPASCAL);
    return new LoadReadings(
        r.head(),
        r.indicator(),
        r.forceScale(),
        r.contact(),
        Optional.of(new LoadReadings.Body(body.diameter(), half)),
        r.reference(),
        r.reaction(),
        r.points());
  }
}
