package rundlauf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.cutting.Coefficients.Kienzle;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Unit;

/** Draws of a material's force coefficients. */
public final class CoefficientDraws {
  /** Thinnest chip that the published tables of kc cover [m] (docs/methods/materials.md). */
  public static final double TABLES_FROM = 0.1e-3;

  /**
   * Standard deviation of the logarithm of {@code mc / (1 − mc)} where Kienzle's law is carried
   * below the tables: our choice. Carried from 0.1 to 0.01 mm with mc = 0.2, kc grows by 1.6; the
   * measured linear edge-force sets of aluminium grow by 2.5 to 3.4, which is 0.9 to 1.4 of these.
   */
  public static final double EXPONENT_SPREAD = 1;

  private static final List<String> EDGE = List.of("Ktc", "Krc", "Kac", "Kte", "Kre", "Kae");
  private static final List<String> POWER = List.of("kc11", "mc", "kr-ratio", "ka-ratio");
  private static final double MILLIMETRE = 1e-3;

  private CoefficientDraws() {}

  /**
   * The factor common to all coefficients of a material.
   *
   * @param material with a common doubt, or none
   * @param draws how many, and their seed
   * @return dimensionless; log-normal with median 1, its one cause {@code material/NAME}
   */
  public static Drawn factor(WorkMaterial material, Draws draws) {
    Cause cause = Cause.normal("material/" + material.name(), "force-coefficients");
    double spread = material.doubt().common();
    Samples factors = cause.draws(draws).map(z -> Math.exp(spread * z));
    return Drawn.of(Unit.ONE, factors, spread == 0 ? Map.of() : Map.of(cause, spread));
  }

  /**
   * Joint draws of the coefficients.
   *
   * <p>Each is its central value plus its own limits (rectangular, each its own cause), times the
   * common factor. Kienzle's exponent is drawn besides, its odds {@code mc / (1 − mc)} log-normal
   * with {@link #EXPONENT_SPREAD}, and kc kept at the thinnest chip of the tables: so the doubt
   * grows as the chip gets thinner, and the exponent stays between 0 and 1.
   *
   * @param material whose
   * @param draws how many, and their seed
   * @return as many coefficients, draw by draw the states of the figures of the same draws
   * @see "docs/methods/materials.md"
   */
  public static List<Coefficients> of(WorkMaterial material, Draws draws) {
    Coefficients central = material.coefficients();
    Samples factors = factor(material, draws).draws(draws);
    Map<String, Samples> values = values(material, draws);
    Samples odds =
        Cause.normal("material/" + material.name(), "chip-below-tables")
            .draws(draws)
            .map(z -> Math.exp(EXPONENT_SPREAD * z));
    List<Coefficients> all = new ArrayList<>();
    for (int i = 0; i < draws.count(); i++) {
      all.add(drawn(central, values, factors.get(i), odds.get(i), i));
    }
    return all;
  }

  /**
   * What puts the coefficients of a material in doubt: the common factor, the exponent below the
   * tables, and the limits of each that has some. None when all are exact.
   */
  public static List<Cause> causes(WorkMaterial material) {
    List<Cause> causes = new ArrayList<>();
    String record = "material/" + material.name();
    if (material.doubt().common() > 0) {
      causes.add(Cause.normal(record, "force-coefficients"));
    }
    if (material.coefficients() instanceof Kienzle) {
      causes.add(Cause.normal(record, "chip-below-tables"));
    }
    List<String> names = material.coefficients() instanceof LinearEdge ? EDGE : POWER;
    Samples limits = material.doubt().limits();
    for (int j = 0; j < limits.size(); j++) {
      if (limits.get(j) > 0) {
        causes.add(Cause.rectangular(record, names.get(j)));
      }
    }
    return causes;
  }

  private static Coefficients drawn(
      Coefficients central, Map<String, Samples> v, double factor, double odds, int i) {
    if (central instanceof LinearEdge) {
      return new LinearEdge(
          factor * at(v, "Ktc", i),
          factor * at(v, "Krc", i),
          factor * at(v, "Kac", i),
          factor * at(v, "Kte", i),
          factor * at(v, "Kre", i),
          factor * at(v, "Kae", i),
          central.axialKnown());
    }
    double typed = at(v, "mc", i);
    double exponent = odds * typed / (1 - typed + odds * typed);
    double pivot = Math.pow(TABLES_FROM / MILLIMETRE, exponent - typed);
    return new Kienzle(
        factor * pivot * at(v, "kc11", i),
        exponent,
        at(v, "kr-ratio", i),
        at(v, "ka-ratio", i),
        central.axialKnown());
  }

  private static double at(Map<String, Samples> values, String name, int i) {
    Samples samples = values.get(name);
    if (samples == null) {
      throw new IllegalStateException("no coefficient " + name);
    }
    return samples.get(i);
  }

  /** Every coefficient with its own limits, by name. */
  private static Map<String, Samples> values(WorkMaterial material, Draws draws) {
    List<String> names = material.coefficients() instanceof LinearEdge ? EDGE : POWER;
    Samples central = central(material.coefficients());
    Samples limits = material.doubt().limits();
    Map<String, Samples> values = new LinkedHashMap<>();
    for (int j = 0; j < names.size(); j++) {
      double middle = central.get(j);
      double u = j < limits.size() ? limits.get(j) : 0;
      Cause cause = Cause.rectangular("material/" + material.name(), names.get(j));
      Samples varied =
          u == 0
              ? Samples.generate(draws.count(), i -> middle)
              : cause.draws(draws).map(z -> middle + u * z);
      values.put(names.get(j), varied);
    }
    return values;
  }

  private static Samples central(Coefficients coefficients) {
    return coefficients instanceof LinearEdge e
        ? Samples.of(e.ktc(), e.krc(), e.kac(), e.kte(), e.kre(), e.kae())
        : power((Kienzle) coefficients);
  }

  private static Samples power(Kienzle k) {
    return Samples.of(k.kc11(), k.mc(), k.radialRatio(), k.axialRatio());
  }
}
