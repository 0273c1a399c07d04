package rundlauf.character;

import java.util.Optional;
import java.util.function.Function;
import rundlauf.bench.Span;
import rundlauf.bench.Spindle;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.speed.Speed;

/**
 * What turns the cutter.
 *
 * @param slowest usable speed
 * @param fastest usable speed
 * @param droop speed lost for each watt at the shaft
 * @param power at the shaft at {@code powerAt}
 * @param powerAt the label's top speed
 */
record MeasuredDrive(Trait slowest, Trait fastest, Trait droop, Trait power, Trait powerAt) {
  /** From the spindle's latest speed trial, on any setup, and its label. */
  static MeasuredDrive of(SpindleResults of, Draws draws) {
    Spindle spindle = of.bench().spindle(of.setup().spindle()).orElseThrow();
    Optional<Speed> speed = of.ofSpindle(Speed.class);
    Efficiency efficiency = Efficiency.of(spindle);
    Trait slowest = speed(spindle, speed.map(s -> from(s, s.usableMin())), Span::min, "slowest");
    Trait fastest = speed(spindle, speed.map(s -> from(s, s.usableMax())), Span::max, "fastest");
    Trait powerAt = powerAt(spindle, fastest);
    return new MeasuredDrive(
        slowest,
        fastest,
        droop(speed, efficiency, draws),
        power(spindle, efficiency, powerAt),
        powerAt);
  }

  private static Trait from(Speed speed, Figure figure) {
    return figure instanceof Missing missing
        ? Trait.missing(Unit.RPM, missing.why())
        : Trait.measured(figure, Saying.of("from-trial", "speed", Arg.of(speed.head().name())));
  }

  private static Trait speed(
      Spindle spindle, Optional<Trait> measured, Function<Span, Quantity> end, String code) {
    if (measured.filter(Trait::known).isPresent()) {
      return measured.get();
    }
    Optional<Trait> label =
        spindle
            .labelSpeed()
            .map(end)
            .map(
                q ->
                    Trait.assumed(
                        q.measured(Cause.rectangular("spindle/" + spindle.name(), code)),
                        Saying.of("speed-of-label", code, Arg.of(q.si(), q.unit()))));
    return label
        .or(() -> measured)
        .orElseGet(() -> Trait.missing(Unit.RPM, Saying.of("not-measured-speed", code)));
  }

  /** The trial's power is read at the plug: a watt at the shaft is more there. */
  private static Trait droop(Optional<Speed> speed, Efficiency efficiency, Draws draws) {
    if (speed.isEmpty()) {
      return Trait.missing(Unit.RPM_PER_WATT, Saying.of("droop-not-measured", "droop"));
    }
    Figure atPlug = speed.get().droop();
    if (atPlug instanceof Missing missing) {
      return Trait.missing(Unit.RPM_PER_WATT, missing.why());
    }
    Drawn atShaft =
        Drawn.through(v -> v[0] / v[1], Unit.RPM_PER_WATT, draws, atPlug, efficiency.ratio());
    return efficiency
        .assumed()
        .map(saying -> Trait.assumed(atShaft, saying))
        .orElseGet(
            () ->
                Trait.measured(
                    atShaft, Saying.of("from-trial", "droop", Arg.of(speed.get().head().name()))));
  }

  private static Trait powerAt(Spindle spindle, Trait fastest) {
    return spindle
        .labelSpeed()
        .map(
            label ->
                Trait.entered(
                    label
                        .max()
                        .measured(Cause.rectangular("spindle/" + spindle.name(), "fastest"))))
        .orElseGet(
            () ->
                fastest.known()
                    ? Trait.assumed(fastest.figure(), Saying.of("power-at-fastest", "power-at"))
                    : fastest);
  }

  private static Trait power(Spindle spindle, Efficiency efficiency, Trait powerAt) {
    Optional<Quantity> input = spindle.input();
    if (input.isEmpty()) {
      return Trait.missing(
          Unit.WATT, Saying.of("input-not-given", "power", Arg.of(spindle.name())));
    }
    if (!powerAt.known()) {
      return Trait.missing(Unit.WATT, Saying.of("power-speed-unknown", "power"));
    }
    Measured shaft =
        Measured.through(
            v -> v[0] * v[1],
            Unit.WATT,
            input.get().measured(Cause.rectangular("spindle/" + spindle.name(), "input")),
            efficiency.ratio());
    return efficiency
        .assumed()
        .map(saying -> Trait.assumed(shaft, saying))
        .orElseGet(() -> Trait.entered(shaft));
  }
}
