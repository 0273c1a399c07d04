package rundlauf.cutting;

import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** What must be said of a material wherever its figures are used. */
final class MaterialSayings {
  private static final String ABOUT = "material";

  private MaterialSayings() {}

  static Saying guessed(String name, double factor) {
    return Saying.of("material-guessed", ABOUT, Arg.of(name), Arg.number(factor));
  }

  static Saying fromMemory(String name) {
    return Saying.of("material-from-memory", ABOUT, Arg.of(name));
  }

  static Saying chipBelowTables() {
    return Saying.of(
        "chip-below-tables", ABOUT, Arg.of(CoefficientDraws.TABLES_FROM, Unit.MILLIMETRE));
  }

  /** The set stands apart from what else is published for its kind. */
  static Saying setLow(String name) {
    return Saying.of("coefficients-low", ABOUT, Arg.of(name));
  }

  static Saying dust(String name) {
    return Saying.of("dust-harmful", ABOUT, Arg.of(name));
  }
}
