package rundlauf.safety.norm;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rundlauf.bench.Holder;
import rundlauf.bench.Span;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** What bores and ranges 8° collets of a size can have. */
public final class ColletRange {
  /** Bores, from a maker's table per DIN 6499, which lists no ER40. */
  private static final List<Size> SIZES =
      List.of(
          new Size("ER11", 0.5, 7, 0.5),
          new Size("ER16", 0.5, 10, 1),
          new Size("ER20", 0.5, 13, 1),
          new Size("ER25", 0.5, 16, 1),
          new Size("ER32", 1, 20, 1));

  /** Lengths closer than this share are the same, in whatever units they were typed. */
  private static final double SAME = 1e-9;

  private ColletRange() {}

  /**
   * A size of collet; all in mm.
   *
   * @param collapse how far one closes in all: of ER11 from an online encyclopedia (weak), of the
   *     others what a tool supplier's help page calls typical
   */
  private record Size(String name, double least, double most, double collapse) {}

  /**
   * What must be looked at.
   *
   * @return a caution for a bore that the size does not have, and one for a range that no such
   *     collet closes over; none for other holders, other sizes and what is not given
   */
  public static List<Saying> cautions(Holder holder) {
    List<Saying> cautions = new ArrayList<>();
    size(holder)
        .ifPresent(
            size -> {
              holder.bore().flatMap(b -> beyond(holder, size, b)).ifPresent(cautions::add);
              holder.range().flatMap(r -> tooWide(holder, size, r)).ifPresent(cautions::add);
            });
    return cautions;
  }

  private static Optional<Size> size(Holder holder) {
    Optional<String> system =
        holder
            .kind()
            .filter("collet"::equals)
            .flatMap(kind -> holder.system())
            .map(s -> s.toUpperCase(Locale.ROOT).replaceAll("[ -]", ""));
    return SIZES.stream().filter(s -> system.filter(s.name()::equals).isPresent()).findFirst();
  }

  private static Optional<Saying> beyond(Holder holder, Size size, Quantity bore) {
    double mm = Unit.MILLIMETRE.fromSi(bore.si());
    return mm > size.most() * (1 + SAME) || mm < size.least() * (1 - SAME)
        ? Optional.of(
            Saying.of(
                "collet-bore-beyond-size",
                "setup",
                Arg.of(bore.si(), bore.unit()),
                Arg.of(holder.name()),
                Arg.of(size.name()),
                mm(size.least()),
                mm(size.most())))
        : Optional.empty();
  }

  private static Optional<Saying> tooWide(Holder holder, Size size, Span range) {
    double width = Unit.MILLIMETRE.fromSi(range.max().si() - range.min().si());
    return width > size.collapse() * (1 + SAME)
        ? Optional.of(
            Saying.of(
                "collet-range-too-wide",
                "setup",
                mm(width),
                Arg.of(holder.name()),
                Arg.of(size.name()),
                mm(size.collapse())))
        : Optional.empty();
  }

  private static Arg mm(double value) {
    return Arg.of(Unit.MILLIMETRE.toSi(value), Unit.MILLIMETRE);
  }
}
