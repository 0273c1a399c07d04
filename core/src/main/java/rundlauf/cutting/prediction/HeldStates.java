package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.character.SetupCharacter;
import rundlauf.character.SetupState;
import rundlauf.character.Trait;
import rundlauf.cutting.CoefficientDraws;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.WorkMaterial;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;

/**
 * The states that cutter, material and setup may be in together.
 *
 * @param central with everything at its value; several where the place of tooth 1 is not known, one
 *     for each place tried
 * @param drawn joint draws
 * @param inputs whatever is in doubt, draw by draw
 */
record HeldStates(List<HeldState> central, List<HeldState> drawn, List<Input> inputs) {
  /**
   * Places of tooth 1 that stand for the whole turn; our choice, odd so that two and four teeth
   * stand at unlike places too.
   */
  private static final int PLACES = 5;

  private static final int FEWEST_DRAWS = 200;

  private static final List<String> ANGLES = List.of("first-tooth", "tilt-angle");

  /**
   * Something in doubt.
   *
   * @param values its draws, SI
   * @param effects of one standard uncertainty of each of its causes, SI
   */
  record Input(Samples values, Map<Cause, Double> effects) {}

  static HeldStates of(
      CutterInUse cutter, WorkMaterial material, SetupCharacter setup, Draws draws, int count) {
    Draws few = few(draws, count);
    var typed = new CutterDraws(cutter, few);
    Input chip = smallestChip(material, few);
    List<Input> inputs = new ArrayList<>(typed.inputs());
    for (Cause cause : CoefficientDraws.causes(material)) {
      inputs.add(new Input(cause.draws(few), Map.of(cause, 1.0)));
    }
    inputs.add(chip);
    inputs.addAll(traits(setup, draws));
    List<Coefficients> coefficients = CoefficientDraws.of(material, few);
    List<SetupState> setups = setup.states(draws, count);
    List<HeldState> drawn = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double smallest = chip.values().get(i);
      drawn.add(typed.held(i, coefficients.get(i), setups.get(i), smallest));
    }
    return new HeldStates(central(cutter, material, setup), drawn, inputs);
  }

  /** Thinnest chip that the edge lifts, over its radius: anywhere in the range published. */
  private static Input smallestChip(WorkMaterial material, Draws few) {
    Cause cause = Cause.rectangular("material/" + material.name(), "smallest-chip");
    double u = (material.smallestChip().high() - material.smallestChip().low()) / Math.sqrt(12);
    double middle = middle(material);
    return new Input(cause.draws(few).map(z -> middle + u * z), Map.of(cause, u));
  }

  private static double middle(WorkMaterial material) {
    return (material.smallestChip().low() + material.smallestChip().high()) / 2;
  }

  private static List<HeldState> central(
      CutterInUse cutter, WorkMaterial material, SetupCharacter setup) {
    List<HeldState> central = new ArrayList<>();
    for (double place : places(setup)) {
      SetupState state = setup.central(place);
      central.add(CutterDraws.central(cutter, material.coefficients(), state, middle(material)));
    }
    return central;
  }

  /** The first of the draws of every cause are the same, however many are drawn. */
  static Draws few(Draws draws, int count) {
    return new Draws(draws.seed(), Math.max(FEWEST_DRAWS, count));
  }

  /** Whether the place of tooth 1 counts and is not known. */
  static boolean placeOpen(SetupCharacter setup) {
    boolean runs = setup.eccentricity().central(0) > 0 || setup.tilt().central(0) > 0;
    return runs && (setup.firstTooth().assumed() || setup.tiltAngle().assumed());
  }

  private static double[] places(SetupCharacter setup) {
    if (!placeOpen(setup)) {
      return new double[] {setup.firstTooth().central(0)};
    }
    double[] places = new double[PLACES];
    for (int i = 0; i < PLACES; i++) {
      places[i] = 2 * Math.PI * (i + 0.5) / PLACES;
    }
    return places;
  }

  /** Traits in doubt, each once; the place of tooth 1 acts round the turn, not along a line. */
  private static List<Input> traits(SetupCharacter setup, Draws draws) {
    Map<Figure, Input> all = new LinkedHashMap<>();
    setup
        .traits()
        .forEach(
            (code, trait) -> {
              boolean anywhere = trait.assumed() && ANGLES.contains(code);
              if (!anywhere) {
                input(trait, draws).ifPresent(input -> all.put(trait.figure(), input));
              }
            });
    return List.copyOf(all.values());
  }

  private static Optional<Input> input(Trait trait, Draws draws) {
    Map<Cause, Double> effects = Drawn.effectsOf(trait.figure());
    return trait.known() && !effects.isEmpty()
        ? Optional.of(new Input(trait.draws(draws, 0), effects))
        : Optional.empty();
  }
}
