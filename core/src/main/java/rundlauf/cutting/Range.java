package rundlauf.cutting;

/** Checks of the numbers a record is given; a wrong one is a fault of our own. */
final class Range {
  private Range() {}

  static void positive(String name, double value, String unit) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          name + " " + value + " is not above 0 and finite (" + unit + ")");
    }
  }

  static void notNegative(String name, double value, String unit) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          name + " " + value + " is not 0 or above and finite (" + unit + ")");
    }
  }

  static void within(String name, double value, double limit, String unit) {
    if (!(Math.abs(value) < limit)) {
      throw new IllegalArgumentException(
          name + " " + value + " is not between ±" + limit + " (" + unit + ")");
    }
  }
}
