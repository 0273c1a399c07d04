package rundlauf.cutting.prediction;

import rundlauf.character.SetupState;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Stiffness;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.deflection.Flexibility;

/**
 * One state of everything but the cut itself, SI.
 *
 * @param tool the cutter
 * @param coefficients of the material
 * @param setup what holds the cutter
 * @param strength rupture strength [Pa]; infinite when it is not known
 * @param edgeRadius [m]; 0 when it is not known
 * @param smallestChip thinnest chip that the edge lifts, over its radius
 */
record HeldState(
    Tool tool,
    Coefficients coefficients,
    SetupState setup,
    double strength,
    double edgeRadius,
    double smallestChip) {
  ToolRunout runout() {
    return new ToolRunout(
        setup.eccentricity(), setup.firstTooth(), setup.tilt(), setup.tiltAngle());
  }

  Flexibility flexibility() {
    return Flexibility.of(tool, new Stiffness(setup.stiffnessX(), setup.stiffnessY()));
  }
}
