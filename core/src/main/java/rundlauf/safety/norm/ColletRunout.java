package rundlauf.safety.norm;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rundlauf.bench.Holder;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.runout.Runout;

/**
 * Whether a collet is as true as ISO 15488 asks, judged on what the collet alone adds, at the
 * norm's distance, on a pin of its size.
 */
final class ColletRunout {
  static final String NORM = "ISO 15488 Table 4";

  /** How far a station may be from the norm's distance [m]; our choice: what a rule sets. */
  static final double NEAR = 0.5e-3;

  /** What typing a diameter in hundredths or in thou rounds away [m]; our choice. */
  private static final double TYPED = 0.5e-6;

  /** The clampings that would tell the parts apart, as the reduction asks for them. */
  private static final Pattern CLAMPINGS = Pattern.compile("parts-[a-z]+-more-clampings?");

  private static final Pattern SYSTEM = Pattern.compile("(?i)ER[ -]?\\d+.*");

  private final Holder collet;
  private final Runout runout;
  private final OptionalDouble pin;

  private ColletRunout(Holder collet, Runout runout, OptionalDouble pin) {
    this.collet = collet;
    this.runout = runout;
    this.pin = pin;
  }

  /**
   * The verdict.
   *
   * @param pin diameter of the pin [m]; empty when it is not given
   * @return empty for a holder that is no 8° collet: not of kind {@code collet}, or of no ER system
   * @see "ISO 15488 Table 4; docs/methods/norms.md"
   */
  static Optional<NormVerdict> of(Holder holder, Runout runout, OptionalDouble pin) {
    boolean collet = holder.kind().filter("collet"::equals).isPresent();
    boolean er = holder.system().filter(s -> SYSTEM.matcher(s.strip()).matches()).isPresent();
    return collet && er
        ? Optional.of(new ColletRunout(holder, runout, pin).verdict())
        : Optional.empty();
  }

  private NormVerdict verdict() {
    if (collet.bore().isEmpty()) {
      return undecided(Optional.empty(), List.of(Saying.of("norm-collet-no-bore", NORM)));
    }
    Quantity bore = collet.bore().get();
    Optional<ColletTable.Row> row = ColletTable.row(bore.si());
    if (row.isEmpty()) {
      Saying none = Saying.of("norm-collet-no-row", NORM, Arg.of(bore.si(), bore.unit()));
      return undecided(row, List.of(none));
    }
    List<Saying> amiss = new ArrayList<>();
    pinAmiss(bore, row.get()).ifPresent(amiss::add);
    List<Runout.Part> alone = runout.parts().stream().filter(p -> isCollet(p)).toList();
    if (alone.isEmpty()) {
      amiss.addAll(joined(row.get()));
    }
    Optional<Runout.Part> here = alone.stream().filter(p -> near(p, row.get())).findFirst();
    if (!alone.isEmpty() && here.isEmpty()) {
      amiss.add(elsewhere(alone, row.get()));
    }
    return here.isPresent() && amiss.isEmpty()
        ? decided(row.get(), here.get())
        : undecided(row, amiss);
  }

  private static boolean isCollet(Runout.Part part) {
    return part.name().equals("collet") && part.eccentricity() instanceof Drawn;
  }

  private static boolean near(Runout.Part part, ColletTable.Row row) {
    return part.station().isPresent()
        && Math.abs(part.station().getAsDouble() - row.test()) <= NEAR * (1 + 1e-9);
  }

  /** The norm's pin has the bore's own diameter, h6. */
  private Optional<Saying> pinAmiss(Quantity bore, ColletTable.Row row) {
    if (pin.isEmpty()) {
      return Optional.of(Saying.of("norm-collet-no-pin", NORM, amount(bore)));
    }
    double over = pin.getAsDouble() - bore.si();
    return over > TYPED || over < -row.under() - TYPED
        ? Optional.of(
            Saying.of(
                "norm-collet-other-pin",
                NORM,
                amount(bore),
                Arg.of(row.under(), Unit.MICROMETRE),
                Arg.of(pin.getAsDouble(), Unit.MILLIMETRE)))
        : Optional.empty();
  }

  /** Where the collet is not told apart: what would tell it, and where to read. */
  private List<Saying> joined(ColletTable.Row row) {
    List<Saying> said = new ArrayList<>();
    said.add(Saying.of("norm-collet-joined", NORM, mm(row.test())));
    List<Saying> asked =
        runout.advice().stream().filter(s -> CLAMPINGS.matcher(s.code()).matches()).toList();
    said.addAll(asked.isEmpty() ? List.of(Saying.of("norm-collet-clampings", NORM)) : asked);
    return said;
  }

  private static Saying elsewhere(List<Runout.Part> alone, ColletTable.Row row) {
    List<Double> heights =
        alone.stream().flatMap(p -> p.station().stream().boxed()).distinct().toList();
    return heights.isEmpty()
        ? Saying.of("norm-collet-no-station", NORM, mm(row.test()))
        : Saying.of(
            "norm-collet-elsewhere",
            NORM,
            mm(row.test()),
            mm(NEAR),
            mm(nearest(heights, row.test())));
  }

  private static double nearest(List<Double> heights, double wanted) {
    double nearest = heights.get(0);
    for (double height : heights) {
      if (Math.abs(height - wanted) < Math.abs(nearest - wanted)) {
        nearest = height;
      }
    }
    return nearest;
  }

  private NormVerdict decided(ColletTable.Row row, Runout.Part part) {
    Drawn tir = ((Drawn) part.eccentricity()).times(2);
    List<Saying> beside = new ArrayList<>();
    collet
        .grade()
        .filter(g -> grade(g).isEmpty())
        .ifPresent(g -> beside.add(Saying.of("norm-collet-class-unknown", NORM, Arg.typed(g))));
    if (!runout.head().conditions().containsKey("pin")) {
      beside.add(Saying.of("norm-collet-pin-unsaid", NORM));
    }
    return Verdicts.decided(norm(), collet.name(), row.limit(grade()), tir, beside);
  }

  private NormVerdict undecided(Optional<ColletTable.Row> row, List<Saying> why) {
    Figure limit =
        row.isPresent()
            ? Measured.exact(row.get().limit(grade()), Unit.MICROMETRE)
            : new Missing(Unit.MICROMETRE, why.get(0));
    return Verdicts.undecided(norm(), collet.name(), limit, Unit.MICROMETRE, why);
  }

  private String norm() {
    return NORM + ", class " + grade();
  }

  /** Class 2 holds unless class 1 is asked for. */
  private int grade() {
    return collet.grade().flatMap(ColletRunout::grade).orElse(2);
  }

  /** Class 1 or 2 as typed; empty for what is no class of the norm. */
  private static Optional<Integer> grade(String typed) {
    return switch (typed.strip().toLowerCase(Locale.ROOT)) {
      case "1", "class 1" -> Optional.of(1);
      case "2", "class 2" -> Optional.of(2);
      default -> Optional.empty();
    };
  }

  private static Arg amount(Quantity quantity) {
    return Arg.of(quantity.si(), quantity.unit());
  }

  private static Arg mm(double si) {
    return Arg.of(si, Unit.MILLIMETRE);
  }
}
