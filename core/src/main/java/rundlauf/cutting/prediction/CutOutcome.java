package rundlauf.cutting.prediction;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.CutterMass;
import rundlauf.cutting.Tool;
import rundlauf.cutting.chip.ChipLoads;
import rundlauf.cutting.deflection.Bending;
import rundlauf.cutting.deflection.CutDeflection;
import rundlauf.cutting.deflection.WallError;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.cutting.force.RigidForces;
import rundlauf.cutting.force.SoftForces;
import rundlauf.cutting.force.SoftTurn;
import rundlauf.cutting.surface.Rubbing;
import rundlauf.cutting.surface.Unbalance;
import rundlauf.quantity.Saying;

/**
 * What one state of a cut does; forces and bending are only worked out when they are asked for, so
 * that a cut which fails at its speed costs nothing more.
 */
final class CutOutcome {
  /** Angles of a turn that one draw of many is given; our choice (docs/methods/predict.md). */
  private static final int COARSE = 96;

  private final CutState state;
  private final boolean feedback;
  private final int angles;
  private final Optional<Bending> bending;
  private @Nullable ForceTurn turn;
  private @Nullable CutDeflection bend;
  private Optional<Saying> unsettled = Optional.empty();

  /**
   * @param feedback whether the deflection is fed back into the chip
   * @param angles of the turn, 72 or more
   * @param bending what bends it with coarser steps; empty: by the fine ones
   */
  private CutOutcome(CutState state, boolean feedback, int angles, Optional<Bending> bending) {
    this.state = state;
    this.feedback = feedback;
    this.angles = angles;
    this.bending = bending;
  }

  /** Of a central state, by fine steps. */
  static CutOutcome fine(CutState state, boolean feedback) {
    return new CutOutcome(state, feedback, RigidForces.ANGLES, Optional.empty());
  }

  /** Of one draw of many, by coarse steps. */
  static CutOutcome coarse(CutState state, boolean feedback, Bending bending) {
    return new CutOutcome(state, feedback, COARSE, Optional.of(bending));
  }

  /**
   * The same cut at another speed: chips, forces and bending hang on the feed of a tooth alone, so
   * what was worked out of them stays.
   *
   * @param other the state, but for its speed the same
   */
  CutOutcome at(CutState other) {
    CutOutcome outcome = new CutOutcome(other, feedback, angles, bending);
    outcome.turn = turn;
    outcome.bend = bend;
    outcome.unsettled = unsettled;
    return outcome;
  }

  CutState state() {
    return state;
  }

  /** Forces over a turn. */
  ForceTurn turn() {
    if (turn == null) {
      turn = feedback ? soft() : rigid();
    }
    return turn;
  }

  /** What they bend. */
  CutDeflection bend() {
    if (bend == null) {
      HeldState held = state.held();
      Tool tool = held.tool();
      bend =
          bending.isPresent()
              ? bending.get().of(turn(), tool, state.cut(), held.runout(), held.flexibility())
              : CutDeflection.of(turn(), tool, state.cut(), held.runout(), held.flexibility());
    }
    return bend;
  }

  /** Why the deflection could not be fed back; the turn is then the rigid one. */
  Optional<Saying> unsettled() {
    turn();
    return unsettled;
  }

  private ForceTurn soft() {
    HeldState held = state.held();
    var flexibility = held.flexibility();
    SoftTurn soft =
        SoftForces.over(
            held.tool(),
            state.cut(),
            held.runout(),
            held.coefficients(),
            flexibility.tipX(),
            flexibility.tipY(),
            angles);
    if (soft instanceof SoftTurn.Settled settled) {
      return settled.turn();
    }
    unsettled = Optional.of(((SoftTurn.Unsettled) soft).why());
    return rigid();
  }

  private ForceTurn rigid() {
    HeldState held = state.held();
    return RigidForces.over(held.tool(), state.cut(), held.runout(), held.coefficients(), angles);
  }

  double thickestChip() {
    return turn().teeth().stream().mapToDouble(ForceTurn.ToothLoad::peak).max().orElse(0);
  }

  double thinnestWorkingChip() {
    OptionalDouble thinnest = Rubbing.thinnestWorkingChip(turn());
    return thinnest.orElse(0);
  }

  double teethCutting() {
    return turn().teeth().stream().filter(tooth -> tooth.peak() > 0).count();
  }

  double effectiveDiameter() {
    return ChipLoads.effectiveDiameter(state.held().tool(), state.cut(), state.held().runout());
  }

  double power() {
    return turn().power(state.cut().speed());
  }

  double lateralPeak() {
    return turn().lateral().max();
  }

  /** Largest pull along the axis, 0 when it only pushes [N]. */
  double pull() {
    return Math.max(0, turn().z().max());
  }

  /** Speed that the spindle still reaches under this cut [turns/s]. */
  double fastestUnderLoad() {
    double droop = state.held().setup().droop();
    double idle = state.held().setup().fastest();
    return droop == 0 ? idle : idle - droop * power();
  }

  /** Torque to be had at the speed of the cut [N m]. */
  double availableTorque() {
    return state.availablePower() / (2 * Math.PI * state.cut().speed());
  }

  /** Force that the cutter's own mass off the axis makes [N]. */
  double unbalance() {
    var tool = state.held().tool();
    double density = CutterMass.density(tool.modulus());
    return Unbalance.force(
        Unbalance.mass(tool, density), state.held().setup().eccentricity(), state.cut().speed());
  }

  double cusp() {
    WallError walls = bend().walls();
    return Math.max(
        walls.plusY().map(WallError.Wall::cusp).orElse(0.0),
        walls.minusY().map(WallError.Wall::cusp).orElse(0.0));
  }

  double plusY() {
    return bend().walls().plusY().orElseThrow().largest();
  }

  double minusY() {
    return bend().walls().minusY().orElseThrow().largest();
  }
}
