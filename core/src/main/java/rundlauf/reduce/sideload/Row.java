package rundlauf.reduce.sideload;

import java.util.List;

/**
 * The row of bodies from the load to the foot, and the joints between them. A body's position is
 * the number of the joint behind it; at position 0 stands the shank where it is pushed, at 1 the
 * shank as a rigid body.
 */
final class Row {
  /** The shank's own bending, then the joints in their order. */
  private static final List<String> JOINTS =
      List.of("shank", "collet", "bearings", "mount", "frame", "table");

  private static final List<String> BODIES = List.of("shank", "nut", "housing", "mount", "table");

  static final String SHANK = "shank";

  private Row() {}

  /** The rigid body that a place is on: the carriage is one with the mount. */
  static String body(String place) {
    return place.equals("carriage") ? "mount" : place;
  }

  /** Where a body stands in the row. */
  static int position(String body) {
    return 1 + BODIES.indexOf(body);
  }

  /** The body at a position. */
  static String at(int position) {
    return BODIES.get(Math.max(0, position - 1));
  }

  /** Where the indicator's foot ends the row. */
  static int foot(String reference) {
    return reference.equals("base") ? JOINTS.size() : position(body(reference));
  }

  /** The joints between two positions, joined. */
  static String joints(int front, int behind) {
    return String.join("+", JOINTS.subList(front, behind));
  }

  /** The bodies whose travels would part joined joints. */
  static List<String> unread(int front, int behind) {
    int first = Math.max(front, 1);
    return behind - first < 2 ? List.of() : BODIES.subList(first, behind - 1);
  }
}
