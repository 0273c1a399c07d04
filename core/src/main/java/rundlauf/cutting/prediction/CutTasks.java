package rundlauf.cutting.prediction;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Cut;
import rundlauf.bench.Cutter;
import rundlauf.bench.Holder;
import rundlauf.bench.Setup;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Materials;
import rundlauf.cutting.Operation;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/** Understands a cut as typed: what it needs of cutter, material and bench together. */
public final class CutTasks {
  /** Lengths closer than this, relatively, are the same in whatever unit they were typed. */
  private static final double SAME = 1e-6;

  /** Kinds of tool whose cut is another one than an end mill's. */
  private static final List<String> OTHER_KINDS = List.of("drill", "v-tool");

  private CutTasks() {}

  /**
   * The cutter of a cut: described in it, named of the bench, or the setup's own.
   *
   * @param bench of the cut's setup; empty when that is described in the cut
   * @throws Refused for a cutter or a setup that is not there, and for what is not known of it
   */
  public static CutterInUse cutter(Cut cut, Optional<Bench> bench) {
    Optional<Setup> setup = bench.map(b -> setup(cut, b));
    Place place = cut.place("cutter");
    Cutter cutter = typed(cut, bench, setup);
    Optional<Quantity> stickout =
        cutter.stickout().isPresent() ? cutter.stickout() : setup.flatMap(Setup::stickout);
    cutter
        .kind()
        .filter(OTHER_KINDS::contains)
        .ifPresent(
            kind -> {
              throw Refused.at(place.field("cutter.kind"), "kind-not-predicted", Arg.of(kind));
            });
    return CutterInUse.of(cutter, stickout, place);
  }

  /** The setup that a cut names of its bench. */
  public static Setup setup(Cut cut, Bench bench) {
    String name = ((Cut.SetupNamed) cut.setup()).name();
    return bench
        .setup(name)
        .orElseThrow(
            () ->
                BenchReader.undefined(
                    cut.place("setup").field("setup.name"),
                    name,
                    bench.setups().stream().map(Setup::name).toList()));
  }

  private static Cutter typed(Cut cut, Optional<Bench> bench, Optional<Setup> setup) {
    if (cut.cutter().orElse(null) instanceof Cut.CutterGiven given) {
      return given.cutter();
    }
    String name =
        cut.cutter().orElse(null) instanceof Cut.CutterNamed named
            ? named.name()
            : setup
                .flatMap(Setup::cutter)
                .orElseThrow(() -> Refused.at(cut.place("cutter"), "cut-without-cutter"));
    return bench
        .flatMap(b -> b.cutter(name))
        .orElseThrow(
            () ->
                BenchReader.undefined(
                    cut.place("cutter"),
                    name,
                    bench
                        .map(b -> b.cutters().stream().map(Cutter::name).toList())
                        .orElse(List.of())));
  }

  /**
   * A cut with everything it needs.
   *
   * @param cutter as {@link #cutter} gives it
   * @param character of what holds it
   * @throws Refused for a material nobody knows, a cut deeper than the flutes, wider than the
   *     cutter, a slot of another width, a side cut without a width
   */
  public static CutTask of(
      Cut cut, CutterInUse cutter, SetupCharacter character, Optional<Bench> bench) {
    return new CutTask(
        cutter,
        asked(cut, cutter),
        Materials.of(cut.material(), bench.map(Bench::materials).orElse(List.of())),
        character,
        allowed(cut, bench));
  }

  private static CutAsked asked(Cut cut, CutterInUse cutter) {
    Operation operation =
        Operation.valueOf(cut.operation().toUpperCase(Locale.ROOT).replace('-', '_'));
    Quantity flutes = cutter.fluteLength();
    if (cut.axial().si() > flutes.si() * (1 + SAME)) {
      throw Refused.at(
          cut.place("axial"), "cut-deeper-than-flutes", printed(cut.axial()), printed(flutes));
    }
    CutAsked asked =
        new CutAsked(
            operation, cut.speed(), cut.feed(), cut.axial(), radial(cut, operation, cutter));
    double turn = CutStates.feedPerTooth(asked, cutter.teeth()) * cutter.teeth();
    if (turn > cutter.diameter().si() / 2) {
      Place feed = cut.place(cut.feed() instanceof Cut.FeedPerTooth ? "feed-per-tooth" : "feed");
      throw Refused.at(
          feed,
          "feed-beyond-cutter",
          Arg.of(turn, cutter.diameter().unit()),
          printed(cutter.diameter()));
    }
    return asked;
  }

  private static Quantity radial(Cut cut, Operation operation, CutterInUse cutter) {
    Quantity diameter = cutter.diameter();
    if (cut.radial().isEmpty()) {
      if (operation == Operation.SLOT) {
        return diameter;
      }
      throw Refused.at(cut.place("radial"), "radial-missing", Arg.of(cut.operation()));
    }
    Quantity radial = cut.radial().get();
    if (radial.si() > diameter.si() * (1 + SAME)) {
      throw Refused.at(
          cut.place("radial"), "radial-over-diameter", printed(radial), printed(diameter));
    }
    if (operation == Operation.SLOT && radial.si() < diameter.si() * (1 - SAME)) {
      throw Refused.at(
          cut.place("radial"), "slot-not-full-width", printed(radial), printed(diameter));
    }
    return operation == Operation.SLOT ? diameter : radial;
  }

  private static Allowed allowed(Cut cut, Optional<Bench> bench) {
    if (bench.isEmpty()) {
      return Allowed.ANYTHING;
    }
    Optional<Quantity> holder =
        setup(cut, bench.get()).holder().flatMap(bench.get()::holder).flatMap(Holder::maxSpeed);
    OptionalDouble none = OptionalDouble.empty();
    return new Allowed(none, none, none, none, si(bench.get().feed()), si(holder));
  }

  private static OptionalDouble si(Optional<Quantity> quantity) {
    return quantity.map(q -> OptionalDouble.of(q.si())).orElse(OptionalDouble.empty());
  }

  private static Arg printed(Quantity quantity) {
    return Arg.of(quantity.si(), quantity.unit());
  }
}
