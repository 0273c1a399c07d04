package rundlauf.simulated;

import java.util.List;

/**
 * The truth about a row of rigid bodies: shank, nut, housing, mount, and the foot; each on the next
 * by a joint that shifts and tips.
 *
 * @param joints from the nut to the foot: collet, bearings, mount, frame
 */
public record BodyRow(List<Joint> joints) {
  private static final List<String> BODIES = List.of("shank", "nut", "housing", "mount");

  public BodyRow {
    joints = List.copyOf(joints);
  }

  /**
   * A joint.
   *
   * @param shift how far it shifts under a force through its middle [m/N]
   * @param tilt how far it tips under a moment [rad/(N m)]
   * @param middle how far its middle lies behind the nut's face [m]
   */
  public record Joint(double shift, double tilt, double middle) {
    /** What it adds to the travel {@code x} from the nut's face under a load at {@code a} [m/N]. */
    public double travel(double a, double x) {
      return shift + tilt * (middle + a) * (middle + x);
    }
  }

  /** Travel of a body over force, without the shank's own bending [m/N]. */
  public double travel(String body, double a, double x) {
    int front = BODIES.indexOf(body.equals("carriage") ? "mount" : body);
    double sum = 0;
    for (Joint joint : joints.subList(front, joints.size())) {
      sum += joint.travel(a, x);
    }
    return sum;
  }
}
