package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.TrialHead;

/**
 * A side-load trial taken on paper, with what was true.
 *
 * @param nose the truth about the nose
 * @param shank the truth about the shank; its grip depth is not told
 * @param lever as the user knows it
 * @param dial with what it was read
 * @param rows in the order taken
 */
public record TakenLoad(Nose nose, Shank shank, Lever lever, Dial dial, List<Row> rows) {
  public TakenLoad {
    rows = List.copyOf(rows);
  }

  /**
   * One reading.
   *
   * @param count masses on the lever
   * @param direction of the push [rad]
   * @param falling whether the load was falling
   * @param zeroed counts how often the dial was set anew
   * @param step reading as whole steps of the dial's grid
   */
  public record Row(int count, double direction, boolean falling, int zeroed, long step) {}

  /** Everything between load and reference [N/m]. */
  public double stiffness() {
    return 1 / (nose.compliance() + shank.compliance());
  }

  /** Without the shank [N/m]. */
  public double setupStiffness() {
    return 1 / nose.compliance();
  }

  /** The readings as a trial file understood would give them. */
  public LoadReadings readings(String file) {
    var head =
        new TrialHead(
            file, "side-load", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    double step = dial.readTo() * Math.cos(dial.angle());
    double along = rows.get(0).direction();
    List<LoadReadings.Point> points = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Row r = rows.get(i);
      points.add(
          new LoadReadings.Point(
              r.count() * lever.newtons(),
              r.step() * step,
              "shank",
              Optional.of(shank.contact()),
              r.direction(),
              along,
              r.falling() ? LoadReadings.Branch.DOWN : LoadReadings.Branch.UP,
              r.zeroed(),
              i + 1));
    }
    return new LoadReadings(
        head,
        dial.limits(file),
        lever.scale("rig/lever"),
        Optional.of(Quantity.exact(shank.contact(), Unit.MILLIMETRE)),
        Optional.of(body()),
        Optional.of("table"),
        Optional.of("table"),
        points);
  }

  private LoadReadings.Body body() {
    return new LoadReadings.Body(
        Quantity.exact(shank.diameter(), Unit.MILLIMETRE),
        Quantity.exact(shank.modulus(), Unit.GIGAPASCAL));
  }
}
