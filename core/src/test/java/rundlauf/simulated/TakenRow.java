package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Stream;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;

/**
 * A side-load trial on paper that touches several places, with what was true.
 *
 * @param row the truth about the joints
 * @param shank the truth about the shank
 * @param lever as the user knows it
 * @param places in the order taken
 */
public record TakenRow(BodyRow row, Shank shank, Lever lever, List<Placed> places) {
  public TakenRow {
    places = List.copyOf(places);
  }

  /** Where the dial stood. */
  public record Spot(String place, double at) {}

  /** What was read at one place. */
  public record Placed(Spot spot, TakenLoad taken) {}

  /**
   * The trial with the next numbers of {@code stream}: one lever, the dial set anew at each spot.
   */
  public static TakenRow take(
      Stream stream,
      BodyRow row,
      Shank shank,
      Nose like,
      Lever lever,
      LoadPlan plan,
      Dial dial,
      List<Spot> spots) {
    double scale = lever.trueScale(stream);
    var truly = new Lever(lever.mass() * scale, 0, lever.loadArm(), 0, lever.contactArm(), 0);
    List<Placed> places = new ArrayList<>();
    for (Spot spot : spots) {
      boolean front = spot.place().equals("shank") || spot.place().equals("nut");
      double travel = row.travel(spot.place(), shank.contact(), spot.at());
      var nose =
          new Nose(
              travel,
              front ? like.play() : 0,
              like.restLag(),
              front ? like.hysteresis() : 0,
              like.stiffening());
      Shank bends =
          spot.place().equals("shank")
              ? shank
              : Shank.clean(shank.diameter(), Double.POSITIVE_INFINITY, shank.contact());
      places.add(new Placed(spot, LoadBench.take(stream, nose, bends, truly, plan, dial)));
    }
    return new TakenRow(row, shank, lever, places);
  }

  /** Everything between load and foot [m/N]. */
  public double whole() {
    return row.travel("shank", shank.contact(), shank.contact()) + shank.compliance();
  }

  /** Share of a joint of the row: 0 collet, 1 bearings, 2 mount, 3 frame. */
  public double share(int joint) {
    return row.joints().get(joint).travel(shank.contact(), shank.contact()) / whole();
  }

  /** The readings as a trial file understood would give them. */
  public LoadReadings readings(String file) {
    List<LoadReadings.Point> points = new ArrayList<>();
    int before = 0;
    for (Placed placed : places) {
      int zeroed = before;
      for (LoadReadings.Point p : placed.taken().readings(file).points()) {
        zeroed = before + p.zeroed();
        points.add(
            new LoadReadings.Point(
                p.load() * lever.mass() / placed.taken().lever().mass(),
                p.reading(),
                placed.spot().place(),
                Optional.of(placed.spot().at()),
                p.direction(),
                p.dial(),
                p.branch(),
                zeroed,
                points.size() + 1));
      }
      before = zeroed;
    }
    LoadReadings one = places.get(0).taken().readings(file);
    return new LoadReadings(
        one.head(),
        one.indicator(),
        lever.scale("rig/lever"),
        Optional.of(Quantity.exact(shank.contact(), Unit.MILLIMETRE)),
        Optional.of(
            new LoadReadings.Body(
                Quantity.exact(shank.diameter(), Unit.MILLIMETRE),
                Quantity.exact(shank.modulus(), Unit.GIGAPASCAL))),
        Optional.of("table"),
        Optional.of("table"),
        points);
  }
}
