package rundlauf.bench;

import java.util.Optional;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * What a norm permits a dial that its owner named by norm, range and bezel: taken for its limits
 * where nothing else is said of them.
 *
 * @param limitOfError by the span it holds for
 * @param hysteresis forward against return at one point
 * @param repeatability of readings at one point
 * @param said that these are a norm's figures and not this dial's
 */
public record PermittedErrors(
    Indicator.Limit limitOfError, Quantity hysteresis, Quantity repeatability, Saying said) {

  private static final String NUMBERS = "limit-of-error";
  static final String LARGE = "50 mm or more";
  static final String SMALL = "under 50 mm";

  /** What {@code norm}, {@code range} and {@code bezel} say; empty where no norm is named. */
  static Optional<PermittedErrors> of(Section s, Quantity division) {
    Optional<String> norm = s.word("norm", DialNorm.NAME);
    Optional<Quantity> range = s.plain("range", Dimension.LENGTH, Bound.POSITIVE);
    Optional<String> bezel = s.word("bezel", LARGE, SMALL);
    if (norm.isEmpty()) {
      for (String field : new String[] {"range", "bezel"}) {
        if (s.has(field)) {
          throw Refused.at(s.place(field), "norm-of-dial-missing", Arg.of(field));
        }
      }
      return Optional.empty();
    }
    if (s.has(NUMBERS)) {
      throw Refused.at(s.place(NUMBERS), "limits-said-twice");
    }
    Quantity travel =
        range.orElseThrow(() -> Refused.at(s.place("range"), "range-of-dial-missing"));
    Optional<Boolean> small = bezel.map(SMALL::equals);
    DialNorm.Row row =
        DialNorm.row(division, travel, small)
            .orElseThrow(
                () ->
                    Refused.at(
                        s.place("range"),
                        "norm-without-row",
                        Arg.of(division.si(), division.unit()),
                        Arg.of(travel.si(), travel.unit()),
                        Arg.term(term(small)),
                        Arg.list(DialNorm.dials(small))));
    return Optional.of(of(row, division, travel, small));
  }

  private static PermittedErrors of(
      DialNorm.Row row, Quantity division, Quantity range, Optional<Boolean> small) {
    DialNorm.Errors errors = row.errors();
    var limit =
        new Indicator.Limit(
            Optional.of(um(errors.tenthTurn())),
            Optional.of(um(errors.halfTurn())),
            Optional.of(um(errors.turn())),
            um(errors.range()));
    Saying said =
        Saying.of(
            "limits-from-norm",
            "indicator",
            Arg.of(DialNorm.NAME),
            Arg.of(division.si(), division.unit()),
            Arg.of(range.si(), range.unit()),
            Arg.term(
                small.isPresent() ? term(small) : row.small() ? "bezel-assumed" : "bezel-any"));
    return new PermittedErrors(limit, um(row.retrace()), um(row.repeatability()), said);
  }

  private static String term(Optional<Boolean> small) {
    return small.map(s -> s ? "bezel-small" : "bezel-large").orElse("bezel-any");
  }

  private static Quantity um(double value) {
    return Quantity.exact(Unit.MICROMETRE.toSi(value), Unit.MICROMETRE);
  }
}
