package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.character.SetupState;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Tool;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Quantity;

/** A cutter's numbers, draw by draw. */
final class CutterDraws {
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

  List<HeldStates.Input> inputs() {
    List<HeldStates.Input> inputs = new ArrayList<>();
    typed.forEach(
        (part, q) -> {
          if (q.hasLimits()) {
            inputs.add(
                new HeldStates.Input(
                    TypedSamples.of(q, cause(part), draws), Map.of(cause(part), q.u())));
          }
        });
    return inputs;
  }

  /** With every number of the cutter at its value. */
  static HeldState central(
      CutterInUse cutter, Coefficients coefficients, SetupState setup, double smallestChip) {
    return new HeldState(
        new Tool(
            cutter.diameter().si(),
            cutter.teeth(),
            cutter.helix().si(),
            cutter.fluteLength().si(),
            cutter.stickout().si(),
            cutter.shank().si(),
            cutter.modulus().si()),
        coefficients,
        setup,
        cutter.strength().map(Quantity::si).orElse(Double.POSITIVE_INFINITY),
        cutter.edgeRadius().map(Quantity::si).orElse(0.0),
        smallestChip);
  }

  /** Draw {@code i} of the cutter, held. */
  HeldState held(int i, Coefficients coefficients, SetupState setup, double smallestChip) {
    return new HeldState(
        tool(i),
        coefficients,
        setup,
        at("strength", i, Double.POSITIVE_INFINITY),
        at("edge-radius", i, 0),
        smallestChip);
  }

  private Tool tool(int i) {
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

  private double at(String part, int i, double otherwise) {
    Samples samples = all.get(part);
    return samples == null ? otherwise : samples.get(i);
  }
}
