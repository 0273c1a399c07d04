package rundlauf.character;

/**
 * What a setup is, for everything that predicts: the narrow waist between measuring and cutting.
 *
 * @param name of the setup
 * @param eccentricity of the axis at the tip, of the next clamping [m]
 * @param firstTooth how far tooth 1 at the tip stands ahead of the high spot [rad]; assumed uniform
 *     over the turn when not given
 * @param tilt [m/m]
 * @param tiltAngle how far tooth 1 at the tip stands ahead of the tilt's high spot [rad]
 * @param stiffnessX static, at the tip, without the cutter's own bending, along x [N/m]
 * @param stiffnessY along y
 * @param speedMin lowest usable speed [turns/s]
 * @param speedMax highest usable speed [turns/s]
 * @param power at the shaft [W], at {@code powerAt}
 * @param powerAt speed it holds at [turns/s]; proportional to speed below it
 * @param hold whether the inspection holds the spindle: not to be powered
 * @param inspected whether there was an inspection
 */
public record SetupCharacter(
    String name,
    Trait eccentricity,
    Trait firstTooth,
    Trait tilt,
    Trait tiltAngle,
    Trait stiffnessX,
    Trait stiffnessY,
    Trait speedMin,
    Trait speedMax,
    Trait power,
    Trait powerAt,
    boolean hold,
    boolean inspected) {}
