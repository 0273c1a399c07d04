package rundlauf.cutting;

/**
 * Largest feed per tooth that is advised for a material, by the cutter's diameter: {@code fixed +
 * perDiameter D}. A place to start from, not a measurement.
 *
 * @param fixed [m], 0 or more
 * @param perDiameter [m/m], 0 or more
 * @param status how well it is known
 * @param source code of where it stands; its words are {@code term.CODE}
 */
public record LargestChip(double fixed, double perDiameter, Status status, String source) {
  /** The chip for a cutter of diameter {@code d} [m]. */
  public double at(double d) {
    return fixed + perDiameter * d;
  }
}
