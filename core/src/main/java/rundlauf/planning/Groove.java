package rundlauf.planning;

import java.util.Optional;
import rundlauf.bench.Cutter;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.surface.VTool;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** A groove that a V-tool cuts. */
final class Groove {
  private Groove() {}

  /**
   * A V-tool as the end mill that it is predicted as: as wide as the groove at half its depth, its
   * flutes as long as the groove is deep, the shank above. The cone between is left out.
   *
   * @param depth of the groove [m]
   */
  static CutterInUse asEndMill(CutterInUse tool, Cutter typed, double depth) {
    double width = tool(typed).grooveWidth(depth / 2, 0);
    Quantity diameter = tool.diameter();
    return new CutterInUse(
        tool.name(),
        tool.kind(),
        new Quantity(width, diameter.halfWidth(), diameter.unit()),
        tool.teeth(),
        tool.helix(),
        Quantity.exact(depth, Unit.MILLIMETRE),
        tool.stickout(),
        tool.shank(),
        tool.modulus(),
        tool.strength(),
        tool.edgeRadius(),
        tool.maxSpeed());
  }

  /**
   * What is wrong with the groove's width; empty when it is within half the tolerance of the job's,
   * or when the job asks for none.
   *
   * @param eccentricity of the tool's axis [m]
   */
  static Optional<Saying> offWidth(JobTask task, Cutter typed, double eccentricity) {
    if (task.width().isEmpty() || task.tolerance().isEmpty()) {
      return Optional.empty();
    }
    VTool tool = tool(typed);
    double asked = task.width().getAsDouble();
    double cut = tool.grooveWidth(task.depth(), eccentricity);
    if (Math.abs(cut - asked) <= task.tolerance().getAsDouble() / 2) {
      return Optional.empty();
    }
    double narrowest = tool.grooveWidth(0, eccentricity);
    return Optional.of(
        asked > narrowest
            ? Saying.of(
                "groove-off-width",
                "width",
                mm(cut),
                mm(asked),
                mm((asked - narrowest) / tool.widthPerDepth()))
            : Saying.of("groove-too-wide-at-any-depth", "width", mm(narrowest), mm(asked)));
  }

  private static VTool tool(Cutter typed) {
    return new VTool(typed.diameter().orElseThrow().si(), typed.angle().orElseThrow().si());
  }

  private static Arg mm(double si) {
    return Arg.of(si, Unit.MILLIMETRE);
  }
}
