package rundlauf.cutting.prediction;

import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Quantity;

/** Draws of what was typed: a rectangular cause where it has limits, else the value itself. */
final class TypedSamples {
  private TypedSamples() {}

  static Samples of(Quantity typed, Cause cause, Draws draws) {
    return typed.hasLimits()
        ? cause.draws(draws).map(z -> typed.si() + typed.u() * z)
        : Samples.generate(draws.count(), i -> typed.si());
  }
}
