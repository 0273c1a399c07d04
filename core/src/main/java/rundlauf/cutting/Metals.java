package rundlauf.cutting;

import java.util.List;
import java.util.Optional;
import rundlauf.cutting.Coefficients.Kienzle;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;

/** Metals of the library; every number is told in docs/methods/materials.md. */
final class Metals {
  private static final double MPA = 1e6;
  private static final double N_PER_MM = 1e3;
  private static final double M_PER_MIN = 1 / 60.0;
  private static final String REVIEW = "source-review-2021";
  private static final String HANDBOOK = "source-kc-handbook";
  private static final String MAKERS = "source-makers-windows";

  /**
   * Fr / Ft of small chips: our choice, the middle of what four published aluminium sets give at
   * 0.02 mm (0.47 to 0.81); half-width 0.2.
   */
  private static final double RADIAL_RATIO = 0.6;

  private static final double RADIAL_RATIO_U = 0.2 / Math.sqrt(3);

  private static final SmallestChip ALUMINIUM_CHIP =
      new SmallestChip(0.35, 0.40, Status.MEMORY, "source-liu-2006");

  static final List<WorkMaterial> ALL =
      List.of(
          aluminium(
              "aluminium 6061-T6",
              LinearEdge.inPlane(243.77 * MPA, 113.5 * MPA, 7.53 * N_PER_MM, 7.83 * N_PER_MM),
              0.35),
          aluminium(
              "aluminium 6082-T6",
              new LinearEdge(
                  631 * MPA, 99 * MPA, 273 * MPA, 13 * N_PER_MM, 10 * N_PER_MM, 2.8 * N_PER_MM),
              0.2),
          aluminium(
              "aluminium 7075-T6",
              new LinearEdge(
                  767.01 * MPA,
                  168.8 * MPA,
                  222 * MPA,
                  27.7 * N_PER_MM,
                  26.6 * N_PER_MM,
                  0.7 * N_PER_MM),
              0.25),
          kienzle(
              "brass",
              780,
              0.18,
              0.25,
              speed(244, 457),
              0.008,
              new SmallestChip(0.6, 0.68, Status.PUBLISHED, "source-cheng-2018-brass")),
          kienzle(
              "mild steel",
              1780,
              0.17,
              0.2,
              speed(46, 76),
              0.004,
              new SmallestChip(0.2, 0.35, Status.MEMORY, "source-liu-2006")),
          kienzle("cast iron", 1160, 0.26, 0.25, speed(61, 91), 0.008, SmallestChip.USUAL));

  private Metals() {}

  private static WorkMaterial aluminium(String name, LinearEdge coefficients, double doubt) {
    boolean low = !coefficients.axialKnown();
    return new WorkMaterial(
        name,
        coefficients,
        CoefficientDoubt.common(doubt),
        Status.PUBLISHED,
        REVIEW,
        Optional.of(speed(244, 610)),
        Optional.of(new LargestChip(0, 0.008, Status.PUBLISHED, MAKERS)),
        ALUMINIUM_CHIP,
        low ? List.of(MaterialSayings.setLow(name)) : List.of());
  }

  private static WorkMaterial kienzle(
      String name,
      double kc11,
      double mc,
      double doubt,
      SpeedWindow speed,
      double chip,
      SmallestChip smallest) {
    List<Saying> cautions =
        List.of(MaterialSayings.fromMemory(name), MaterialSayings.chipBelowTables());
    return new WorkMaterial(
        name,
        new Kienzle(kc11 * MPA, mc, RADIAL_RATIO, 0, false),
        new CoefficientDoubt(doubt, Samples.of(0, 0, RADIAL_RATIO_U, 0)),
        Status.MEMORY,
        HANDBOOK,
        Optional.of(speed),
        Optional.of(new LargestChip(0, chip, Status.PUBLISHED, MAKERS)),
        smallest,
        cautions);
  }

  private static SpeedWindow speed(double slowest, double fastest) {
    return new SpeedWindow(slowest * M_PER_MIN, fastest * M_PER_MIN, Status.PUBLISHED, MAKERS);
  }
}
