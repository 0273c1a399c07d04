package rundlauf.cutting;

/**
 * Cutting speeds that makers advise for a material: a place to start from, not a measurement. Only
 * the fast end is a limit; a small cutter often cannot reach the slow one.
 *
 * @param slowest [m/s], 0 or more
 * @param fastest [m/s], at least {@code slowest}
 * @param status how well it is known
 * @param source code of where it stands; its words are {@code term.CODE}
 */
public record SpeedWindow(double slowest, double fastest, Status status, String source) {}
