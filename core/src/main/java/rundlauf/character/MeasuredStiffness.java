package rundlauf.character;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Setup;
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
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.Latest;
import rundlauf.reduce.sideload.Pivot;
import rundlauf.reduce.sideload.SideLoad;

/**
 * How stiffly a cutter's tip is held, without its own bending.
 *
 * @param along the push that was measured, taken for the feed's direction
 * @param across it
 * @param cautions of what is not in it
 */
record MeasuredStiffness(Trait along, Trait across, List<Saying> cautions) {
  private static final double SAME_HEIGHT = 1e-6;

  /**
   * How far the stiffness of another setup may be off, either way; our choice, since nothing is
   * published of how like holders differ.
   */
  private static final double LIKE_DOUBT = 0.3;

  /**
   * From the setup's latest side-load trial, or one taken over.
   *
   * @param stickout from the nut's face to the tip
   */
  static MeasuredStiffness of(SpindleResults of, Quantity stickout, Draws draws) {
    Optional<SideLoad> own = of.ofSetup(SideLoad.class);
    if (own.isPresent() && own.get().setupStiffness().known()) {
      return carried(of, own.get(), Optional.empty(), stickout, draws);
    }
    Optional<SideLoad> like =
        Latest.of(
            of.ofLikeSetups(SideLoad.class).stream()
                .filter(load -> load.setupStiffness().known())
                .toList(),
            SideLoad.class);
    return like.map(load -> carried(of, load, load.head().setup(), stickout, draws))
        .orElseGet(() -> missing(own));
  }

  private static MeasuredStiffness missing(Optional<SideLoad> own) {
    Saying why =
        own.map(load -> ((Missing) load.setupStiffness()).why())
            .orElseGet(() -> Saying.of("not-measured-side-load", "stiffness"));
    Trait none =
        Trait.missing(Unit.NEWTON_PER_MICROMETRE, new Saying(why.code(), "stiffness", why.args()));
    return new MeasuredStiffness(none, none, List.of());
  }

  private static MeasuredStiffness carried(
      SpindleResults of, SideLoad load, Optional<String> other, Quantity stickout, Draws draws) {
    List<Saying> assumed = new ArrayList<>();
    other.ifPresent(
        setup ->
            assumed.add(
                Saying.of(
                    "stiffness-taken-over",
                    "stiffness",
                    Arg.of(setup),
                    Arg.of(LIKE_DOUBT, Unit.PERCENT))));
    Figure carried = atTip(of, load, stickout, assumed, draws);
    Figure there = other.isPresent() ? doubted(carried, of.setup(), draws) : carried;
    Trait along =
        assumed.isEmpty()
            ? Trait.measured(
                there, Saying.of("from-trial", "stiffness", Arg.of(load.head().name())))
            : new Trait(there, Origin.ASSUMED, assumed);
    assumed.add(Saying.of("stiffness-one-direction", "stiffness"));
    return new MeasuredStiffness(along, new Trait(there, Origin.ASSUMED, assumed), cautions(load));
  }

  private static Figure doubted(Figure stiffness, Setup setup, Draws draws) {
    Cause cause = Cause.rectangular("setup/" + setup.name(), "taken-over");
    Measured factor = Measured.exact(1, Unit.ONE).with(cause, LIKE_DOUBT / Math.sqrt(3));
    return Drawn.through(v -> v[0] * v[1], Unit.NEWTON_PER_MICROMETRE, draws, stiffness, factor);
  }

  /**
   * The stiffness at the tip: as if the spindle tipped about a point in its clamp, so that the
   * compliance grows with the distances of load and dial from it.
   */
  private static Figure atTip(
      SpindleResults of, SideLoad load, Quantity stickout, List<Saying> assumed, Draws draws) {
    Optional<Quantity> contact = load.readings().contact();
    Optional<Quantity> toMount =
        of.bench()
            .spindle(of.setup().spindle())
            .flatMap(Spindle::nose)
            .flatMap(Spindle.Nose::toMount);
    double dial = dial(load.readings());
    if (contact.isPresent() && same(contact.get(), dial, stickout)) {
      return load.setupStiffness();
    }
    if (contact.isEmpty() || toMount.isEmpty()) {
      String code = contact.isEmpty() ? "stiffness-contact-unknown" : "stiffness-pivot-unknown";
      assumed.add(Saying.of(code, "stiffness", amount(stickout)));
      return load.setupStiffness();
    }
    assumed.add(
        Saying.of(
            "stiffness-pivot-assumed",
            "stiffness",
            amount(contact.get()),
            amount(stickout),
            amount(toMount.get()),
            Arg.of(load.head().name())));
    double between = dial - contact.get().si();
    return Drawn.through(
        v -> v[0] * (v[1] + v[2]) * (v[1] + v[2] + between) / Math.pow(v[1] + v[3], 2),
        Unit.NEWTON_PER_MICROMETRE,
        draws,
        load.setupStiffness(),
        Pivot.of(of.setup().spindle(), toMount.get()),
        contact.get().measured(Cause.rectangular(load.head().name(), "contact")),
        stickout.measured(of.stickout()));
  }

  private static boolean same(Quantity contact, double dial, Quantity stickout) {
    return Math.abs(contact.si() - stickout.si()) < SAME_HEIGHT
        && Math.abs(dial - stickout.si()) < SAME_HEIGHT;
  }

  /** Where the dial touched [m]; not said: where the load did. */
  private static double dial(LoadReadings readings) {
    return readings.points().stream()
        .filter(point -> point.load() > 0)
        .findFirst()
        .flatMap(LoadReadings.Point::at)
        .orElseGet(() -> readings.contact().map(Quantity::si).orElse(0.0));
  }

  private static List<Saying> cautions(SideLoad load) {
    List<Saying> cautions = new ArrayList<>();
    load.play()
        .estimate()
        .filter(play -> play.interval().low() > 0)
        .ifPresent(
            play ->
                cautions.add(
                    Saying.of(
                        "play-not-in-prediction",
                        "play",
                        Arg.about(play.value(), Unit.MICROMETRE))));
    load.readings()
        .reference()
        .filter(reference -> !reference.equals("table"))
        .ifPresent(
            reference ->
                cautions.add(
                    Saying.of(
                        "stiffness-reference", "stiffness", Arg.term("reference-" + reference))));
    return cautions;
  }

  private static Arg amount(Quantity quantity) {
    return Arg.of(quantity.si(), quantity.unit());
  }
}
