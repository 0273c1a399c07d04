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
import rundlauf.cutting.Tool;
import rundlauf.cutting.WorkMaterial;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Quantity;

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
    List<Coefficients> coefficients = CoefficientDraws.of(material, few);
    Cause chip = Cause.rectangular("material/" + material.name(), "smallest-chip");
    double middle = (material.smallestChip().low() + material.smallestChip().high()) / 2;
    double half = (material.smallestChip().high() - material.smallestChip().low()) / 2;
    Samples smallest = chip.draws(few).map(z -> middle + half / Math.sqrt(3) * z);
    List<SetupState> setups = setup.states(draws, count);
    List<HeldState> drawn = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      drawn.add(
          new HeldState(
              typed.tool(i),
              coefficients.get(i),
              setups.get(i),
              typed.strength(i),
              typed.edgeRadius(i),
              smallest.get(i)));
    }
    List<HeldState> central = new ArrayList<>();
    for (double place : places(setup)) {
      central.add(
          new HeldState(
              CutterDraws.central(cutter),
              material.coefficients(),
              setup.central(place),
              cutter.strength().map(Quantity::si).orElse(Double.POSITIVE_INFINITY),
              cutter.edgeRadius().map(Quantity::si).orElse(0.0),
              middle));
    }
    List<Input> inputs = new ArrayList<>(typed.inputs());
    for (Cause cause : CoefficientDraws.causes(material)) {
      inputs.add(new Input(cause.draws(few), Map.of(cause, 1.0)));
    }
    inputs.addAll(traits(setup, draws));
    return new HeldStates(central, drawn, inputs);
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

  /** A cutter's numbers, draw by draw. */
  private static final class CutterDraws {
    private final CutterInUse cutter;
    private final Map<String, Quantity> typed = new LinkedHashMap<>();
    private final Map<String, Samples> all = new LinkedHashMap<>();
    private final Draws draws;

    CutterDraws(CutterInUse cutter, Draws draws) {
      this.cutter = cutter;
      this.draws = draws;
      typed.put("diameter", cutter.diameter());
      typed.put("helix", cutter.helix());
      typed.put("flute-length", cutter.fluteLength());
      typed.put("stickout", cutter.stickout());
      typed.put("shank", cutter.shank());
      typed.put("modulus", cutter.modulus());
      cutter.strength().ifPresent(q -> typed.put("strength", q));
      cutter.edgeRadius().ifPresent(q -> typed.put("edge-radius", q));
      typed.forEach((part, q) -> all.put(part, TypedSamples.of(q, cause(part), draws)));
    }

    private Cause cause(String part) {
      return Cause.rectangular("cutter/" + cutter.name(), part);
    }

    List<Input> inputs() {
      List<Input> inputs = new ArrayList<>();
      typed.forEach(
          (part, q) -> {
            if (q.hasLimits()) {
              inputs.add(
                  new Input(TypedSamples.of(q, cause(part), draws), Map.of(cause(part), q.u())));
            }
          });
      return inputs;
    }

    static Tool central(CutterInUse cutter) {
      return new Tool(
          cutter.diameter().si(),
          cutter.teeth(),
          cutter.helix().si(),
          cutter.fluteLength().si(),
          cutter.stickout().si(),
          cutter.shank().si(),
          cutter.modulus().si());
    }

    Tool tool(int i) {
      double stickout = at("stickout", i, 0);
      return new Tool(
          at("diameter", i, 0),
          cutter.teeth(),
          at("helix", i, 0),
          Math.min(at("flute-length", i, 0), stickout),
          stickout,
          at("shank", i, 0),
          at("modulus", i, 0));
    }

    double strength(int i) {
      return at("strength", i, Double.POSITIVE_INFINITY);
    }

    double edgeRadius(int i) {
      return at("edge-radius", i, 0);
    }

    private double at(String part, int i, double otherwise) {
      Samples samples = all.get(part);
      return samples == null ? otherwise : samples.get(i);
    }
  }
}
