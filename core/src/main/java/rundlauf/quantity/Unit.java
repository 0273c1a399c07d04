package rundlauf.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units that a file may use and that a figure may be printed in. Inside, everything is SI. */
public enum Unit {
  ONE(Dimension.NUMBER, 1, "1"),
  PERCENT(Dimension.NUMBER, 0.01, "%"),
  MICROMETRE_PER_MILLIMETRE(Dimension.NUMBER, 1e-3, "um/mm", "µm/mm", "μm/mm"),
  METRE(Dimension.LENGTH, 1, "m"),
  MILLIMETRE(Dimension.LENGTH, 1e-3, "mm"),
  MICROMETRE(Dimension.LENGTH, 1e-6, "um", "µm", "μm"),
  NANOMETRE(Dimension.LENGTH, 1e-9, "nm"),
  INCH(Dimension.LENGTH, 0.0254, "in"),
  THOU(Dimension.LENGTH, 0.0000254, "thou"),
  RADIAN(Dimension.ANGLE, 1, "rad"),
  DEGREE(Dimension.ANGLE, Math.PI / 180, "deg"),
  TURN(Dimension.ANGLE, 2 * Math.PI, "turn"),
  KILOGRAM(Dimension.MASS, 1, "kg"),
  GRAM(Dimension.MASS, 1e-3, "g"),
  NEWTON(Dimension.FORCE, 1, "N"),
  KILOGRAM_FORCE(Dimension.FORCE, 9.80665, "kgf"),
  POUND_FORCE(Dimension.FORCE, 4.4482216152605, "lbf"),
  NEWTON_PER_METRE(Dimension.STIFFNESS, 1, "N/m"),
  NEWTON_PER_MILLIMETRE(Dimension.STIFFNESS, 1e3, "N/mm"),
  NEWTON_PER_MICROMETRE(Dimension.STIFFNESS, 1e6, "N/um", "N/µm", "N/μm"),
  MICROMETRE_PER_NEWTON(Dimension.COMPLIANCE, 1e-6, "um/N", "µm/N", "μm/N"),
  NEWTON_METRE(Dimension.TORQUE, 1, "N m"),
  NEWTON_MILLIMETRE(Dimension.TORQUE, 1e-3, "N mm"),
  /** Rotational frequency; inside it is turns per second (ISO 80000-3, from memory). */
  RPM(Dimension.FREQUENCY, 1.0 / 60, "rpm"),
  HERTZ(Dimension.FREQUENCY, 1, "Hz"),
  PER_SECOND(Dimension.FREQUENCY, 1, "1/s"),
  WATT(Dimension.POWER, 1, "W"),
  KILOWATT(Dimension.POWER, 1e3, "kW"),
  VOLT(Dimension.VOLTAGE, 1, "V"),
  AMPERE(Dimension.CURRENT, 1, "A"),
  OHM(Dimension.RESISTANCE, 1, "ohm"),
  MEGOHM(Dimension.RESISTANCE, 1e6, "Mohm"),
  MILLISECOND(Dimension.TIME, 1e-3, "ms"),
  SECOND(Dimension.TIME, 1, "s"),
  MINUTE(Dimension.TIME, 60, "min"),
  HOUR(Dimension.TIME, 3600, "h"),
  MILLIMETRE_PER_SECOND(Dimension.VELOCITY, 1e-3, "mm/s"),
  MILLIMETRE_PER_MINUTE(Dimension.VELOCITY, 1e-3 / 60, "mm/min"),
  METRE_PER_MINUTE(Dimension.VELOCITY, 1.0 / 60, "m/min"),
  INCH_PER_MINUTE(Dimension.VELOCITY, 0.0254 / 60, "in/min"),
  MEGAPASCAL(Dimension.PRESSURE, 1e6, "MPa"),
  GIGAPASCAL(Dimension.PRESSURE, 1e9, "GPa"),
  NEWTON_PER_SQUARE_MILLIMETRE(Dimension.PRESSURE, 1e6, "N/mm2", "N/mm²"),
  /** A temperature's difference is in kelvin. */
  MICROMETRE_PER_KELVIN(Dimension.GROWTH_PER_TEMPERATURE, 1e-6, "um/K", "µm/K", "μm/K"),
  DEGREE_CELSIUS(Dimension.TEMPERATURE, 1, "degC"),
  METRE_PER_SECOND_SQUARED(Dimension.ACCELERATION, 1, "m/s2", "m/s²"),
  CUBIC_MILLIMETRE_PER_MINUTE(Dimension.VOLUME_RATE, 1e-9 / 60, "mm3/min"),
  RPM_PER_WATT(Dimension.FREQUENCY_PER_POWER, 1.0 / 60, "rpm/W");

  private final Dimension dimension;
  private final double factor;
  private final List<String> symbols;

  Unit(Dimension dimension, double factor, String... symbols) {
    this.dimension = dimension;
    this.factor = factor;
    this.symbols = List.of(symbols);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The first symbol: how the unit is written in files and JSON. */
  public String symbol() {
    return symbols.get(0);
  }

  /** The symbol as it is printed for people: µ where files may write u. */
  public String printed() {
    return symbol().replace("um", "µm");
  }

  /** The unit with this symbol, exactly as written. */
  public static Optional<Unit> ofSymbol(String symbol) {
    return Arrays.stream(values()).filter(u -> u.symbols.contains(symbol)).findFirst();
  }

  /** All units of a dimension, in the order of this list. */
  public static List<Unit> ofDimension(Dimension dimension) {
    return Arrays.stream(values()).filter(u -> u.dimension == dimension).toList();
  }

  /** A value in this unit, in SI (temperature stays in degrees Celsius). */
  public double toSi(double value) {
    return value * factor;
  }

  /** A value in SI, in this unit. */
  public double fromSi(double value) {
    return value / factor;
  }
}
