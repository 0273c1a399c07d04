package rundlauf.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Saying;

/**
 * Materials for which no trustworthy force coefficients are published: orders of magnitude from
 * their hardness, each to be replaced by a test piece (docs/methods/materials.md).
 */
final class Guesses {
  /** The factor either way that the guess is meant to stay within at 95 %: our choice. */
  static final double FACTOR = 3;

  private static final double SPREAD = Math.log(FACTOR) / 1.96;

  /**
   * kc over hardness at a chip of 0.02 mm: our choice, because the published aluminium sets give
   * 0.7 to 1.5.
   */
  private static final double OVER_HARDNESS = 1;

  private static final double CHIP = 0.02e-3;

  /** Kte / Ktc [m], Krc / Ktc and Kre / Kte, about as in the published aluminium sets. */
  private static final double EDGE = 0.03e-3;

  private static final double RADIAL = 0.3;
  private static final double RADIAL_EDGE = 1;
  private static final double M_PER_MIN = 1 / 60.0;
  private static final String MAKERS = "source-makers-windows";
  private static final String GUESS = "source-guess";

  static final List<WorkMaterial> ALL =
      List.of(
          of("acrylic", 180, false, makers(244, 488), chip(0.012, Status.PUBLISHED, MAKERS)),
          of("acetal", 140, false, makers(244, 488), chip(0.012, Status.PUBLISHED, MAKERS)),
          of("polycarbonate", 120, false, makers(61, 152), chip(0.008, Status.PUBLISHED, MAKERS)),
          of("hardwood", 50, true, guess(600), chip(0.016, Status.GUESS, GUESS)),
          of("ebony", 130, true, guess(400), chip(0.012, Status.GUESS, GUESS)),
          of("bone", 450, true, guess(120), chip(0.008, Status.GUESS, GUESS)),
          of("mother of pearl", 1800, true, guess(90), chip(0.004, Status.GUESS, GUESS)),
          of(
              "glass-epoxy laminate",
              300,
              true,
              new SpeedWindow(0, 150 * M_PER_MIN, Status.PUBLISHED, "source-board-page"),
              chip(0.008, Status.GUESS, GUESS)));

  private Guesses() {}

  /**
   * A guess.
   *
   * @param hardness indentation hardness [MPa], from memory
   */
  private static WorkMaterial of(
      String name, double hardness, boolean dust, SpeedWindow speed, LargestChip chip) {
    List<Saying> cautions = new ArrayList<>();
    cautions.add(MaterialSayings.guessed(name, FACTOR));
    if (dust) {
      cautions.add(MaterialSayings.dust(name));
    }
    return new WorkMaterial(
        name,
        coefficients(OVER_HARDNESS * hardness * 1e6),
        CoefficientDoubt.common(SPREAD),
        Status.GUESS,
        "source-hardness-guess",
        Optional.of(speed),
        Optional.of(chip),
        SmallestChip.USUAL,
        cautions);
  }

  /** A linear edge-force set whose tangential part is {@code kc} at a chip of 0.02 mm. */
  private static Coefficients coefficients(double kc) {
    double ktc = kc * CHIP / (CHIP + EDGE);
    double kte = EDGE * ktc;
    return Coefficients.LinearEdge.inPlane(ktc, RADIAL * ktc, kte, RADIAL_EDGE * kte);
  }

  private static SpeedWindow makers(double slowest, double fastest) {
    return new SpeedWindow(slowest * M_PER_MIN, fastest * M_PER_MIN, Status.PUBLISHED, MAKERS);
  }

  private static SpeedWindow guess(double fastest) {
    return new SpeedWindow(0, fastest * M_PER_MIN, Status.GUESS, GUESS);
  }

  private static LargestChip chip(double perDiameter, Status status, String source) {
    return new LargestChip(0, perDiameter, status, source);
  }
}
