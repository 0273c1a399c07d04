package rundlauf.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Material;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** A material with the user's own coefficients, understood. */
final class EnteredMaterial {
  private static final String TYPED = "source-typed";
  private static final Quantity NOTHING = Quantity.exact(0, Unit.ONE);

  private EnteredMaterial() {}

  static WorkMaterial of(Material material) {
    Material.Force force = material.force().orElseThrow();
    List<Quantity> typed = typed(force);
    Coefficients coefficients = coefficients(force);
    List<Saying> cautions = new ArrayList<>();
    if (typed.stream().noneMatch(Quantity::hasLimits)) {
      cautions.add(Saying.of("coefficients-without-doubt", "material", Arg.of(material.name())));
    }
    if (coefficients instanceof Coefficients.Kienzle) {
      cautions.add(MaterialSayings.chipBelowTables());
    }
    return new WorkMaterial(
        material.name(),
        coefficients,
        new CoefficientDoubt(0, Samples.of(typed.stream().map(Quantity::u).toList())),
        Status.ENTERED,
        TYPED,
        speed(material),
        chip(material),
        SmallestChip.USUAL,
        cautions);
  }

  static Optional<SpeedWindow> speed(Material material) {
    return material
        .cuttingSpeed()
        .map(s -> new SpeedWindow(s.min().si(), s.max().si(), Status.ENTERED, TYPED));
  }

  static Optional<LargestChip> chip(Material material) {
    return material.largestChip().map(q -> new LargestChip(q.si(), 0, Status.ENTERED, TYPED));
  }

  /**
   * What was typed, in the order of the coefficients' record; nothing for an axial one left out.
   */
  private static List<Quantity> typed(Material.Force force) {
    if (force instanceof Material.EdgeForce e) {
      return List.of(
          e.ktc(), e.krc(), e.kac().orElse(NOTHING), e.kte(), e.kre(), e.kae().orElse(NOTHING));
    }
    Material.ChipPower p = (Material.ChipPower) force;
    return List.of(p.kc11(), p.mc(), p.krRatio(), p.kaRatio().orElse(NOTHING));
  }

  private static Coefficients coefficients(Material.Force force) {
    double[] v = typed(force).stream().mapToDouble(Quantity::si).toArray();
    if (force instanceof Material.EdgeForce e) {
      return new Coefficients.LinearEdge(v[0], v[1], v[2], v[3], v[4], v[5], e.kac().isPresent());
    }
    Material.ChipPower p = (Material.ChipPower) force;
    return new Coefficients.Kienzle(v[0], v[1], v[2], v[3], p.kaRatio().isPresent());
  }
}
