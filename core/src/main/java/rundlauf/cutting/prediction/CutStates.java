package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rundlauf.bench.Cut;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Quantity;

/** The states that a cut may be in: those of what holds it, and how well it is set itself. */
final class CutStates {
  private static final String RECORD = "cut";

  private CutStates() {}

  /** The central states. */
  static List<CutState> central(CutAsked cut, List<HeldState> held) {
    return held.stream()
        .map(
            h ->
                state(
                    cut.operation(),
                    h,
                    cut.speed().si(),
                    feed(cut).si(),
                    cut.feed(),
                    cut.axial().si(),
                    cut.radial().si()))
        .toList();
  }

  /** The drawn states, as many as are held. */
  static List<CutState> drawn(CutAsked cut, List<HeldState> held, Draws draws) {
    Draws few = HeldStates.few(draws, held.size());
    Samples speed = of(cut.speed(), "speed", few);
    Samples feed = of(feed(cut), "feed", few);
    Samples axial = of(cut.axial(), "axial", few);
    Samples radial = of(cut.radial(), "radial", few);
    List<CutState> states = new ArrayList<>(held.size());
    for (int i = 0; i < held.size(); i++) {
      states.add(
          state(
              cut.operation(),
              held.get(i),
              speed.get(i),
              feed.get(i),
              cut.feed(),
              axial.get(i),
              radial.get(i)));
    }
    return states;
  }

  /** What of the cut is in doubt. */
  static List<HeldStates.Input> inputs(CutAsked cut, Draws draws, int count) {
    Draws few = HeldStates.few(draws, count);
    List<HeldStates.Input> inputs = new ArrayList<>();
    add(inputs, cut.speed(), "speed", few);
    add(inputs, feed(cut), "feed", few);
    add(inputs, cut.axial(), "axial", few);
    if (cut.operation() != Operation.SLOT) {
      add(inputs, cut.radial(), "radial", few);
    }
    return inputs;
  }

  private static void add(List<HeldStates.Input> inputs, Quantity typed, String part, Draws draws) {
    if (typed.hasLimits()) {
      inputs.add(new HeldStates.Input(of(typed, part, draws), Map.of(cause(part), typed.u())));
    }
  }

  private static Samples of(Quantity typed, String part, Draws draws) {
    return TypedSamples.of(typed, cause(part), draws);
  }

  private static Cause cause(String part) {
    return Cause.rectangular(RECORD, part);
  }

  /** The feed of one tooth at the values typed [m]. */
  static double feedPerTooth(CutAsked cut, int teeth) {
    double typed = feed(cut).si();
    return cut.feed() instanceof Cut.FeedPerTooth ? typed : typed / (cut.speed().si() * teeth);
  }

  private static Quantity feed(CutAsked cut) {
    return cut.feed() instanceof Cut.FeedPerTooth tooth
        ? tooth.length()
        : ((Cut.FeedRate) cut.feed()).velocity();
  }

  private static CutState state(
      Operation operation,
      HeldState held,
      double speed,
      double feed,
      Cut.Feed kind,
      double axial,
      double radial) {
    double diameter = held.tool().diameter();
    double perTooth =
        kind instanceof Cut.FeedPerTooth ? feed : feed / (speed * held.tool().teeth());
    double width = operation == Operation.SLOT ? diameter : Math.min(radial, diameter);
    return new CutState(
        held,
        new Conditions(
            operation, speed, perTooth, Math.min(axial, held.tool().fluteLength()), width));
  }
}
