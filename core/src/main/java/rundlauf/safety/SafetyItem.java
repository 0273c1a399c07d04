package rundlauf.safety;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rundlauf.quantity.Unit;

/**
 * The safety list: what must have been looked at, and found good, before a spindle is powered. The
 * limits are published facts to hold a reading against, no proof of conformity; the sources stand
 * in docs/methods/inspection.md.
 */
public enum SafetyItem {
  MAINS_PARTS_COVERED(When.MAINS),
  /** Resistance from the plug's pin to the nose. */
  PROTECTIVE_EARTH(When.MAINS, Limit.atMost(0.3, Unit.OHM)),
  /** Of the motor alone: never through a drive or a speed controller. */
  INSULATION_RESISTANCE(When.MAINS, Limit.atLeast(1, Unit.MEGOHM)),
  LEAKAGE_CURRENT(When.MAINS, Limit.atMost(3.5e-3, Unit.AMPERE)),
  RCD_TYPE(When.MAINS),
  FUSE(When.ALWAYS),
  STRAIN_RELIEF(When.ALWAYS),
  /** Of what a hand can touch: 25 V AC or 60 V DC, dry. */
  TOUCHABLE_VOLTAGE(When.ALWAYS, Limit.atMost(25, Unit.VOLT)),
  DRIVE_DISCHARGE_TIME(When.DRIVE),
  DRIVE_MATCHES_PLATE(When.DRIVE),
  BRUSHES(When.BRUSHES),
  ROTATION(When.ALWAYS),
  GUARD(When.ALWAYS),
  SPEED_LIMITS(When.ALWAYS),
  FIRST_START(When.ALWAYS),
  EYES_AND_EARS(When.ALWAYS),
  DUST(When.ALWAYS),
  FIRE(When.ALWAYS);

  /** Highest touchable direct voltage without basic protection, dry [V]. */
  static final double TOUCHABLE_DC = 60;

  private final When when;
  private final Optional<Limit> limit;

  SafetyItem(When when) {
    this.when = when;
    this.limit = Optional.empty();
  }

  SafetyItem(When when, Limit limit) {
    this.when = when;
    this.limit = Optional.of(limit);
  }

  /** What a spindle must have for an item to concern it. */
  public enum When {
    ALWAYS,
    MAINS,
    DRIVE,
    BRUSHES
  }

  /**
   * A limit of a number that may stand beside an item.
   *
   * @param si the limit, SI
   * @param unit of the number
   * @param most whether it is the largest good value, else the smallest
   */
  public record Limit(double si, Unit unit, boolean most) {
    static Limit atMost(double value, Unit unit) {
      return new Limit(unit.toSi(value), unit, true);
    }

    static Limit atLeast(double value, Unit unit) {
      return new Limit(unit.toSi(value), unit, false);
    }

    /** Whether a value [SI] is within the limit, the limit itself included. */
    public boolean allows(double value) {
      return most ? value <= si : value >= si;
    }
  }

  /**
   * What is known of a spindle's supply; what is not known counts as there.
   *
   * @param mains mains voltage reaches it, its drive or its controller
   * @param drive a drive (frequency converter) feeds it
   * @param brushes it has brushes
   */
  public record Fed(boolean mains, boolean drive, boolean brushes) {
    public static final Fed UNKNOWN = new Fed(true, true, true);
  }

  /** The name an inspection uses, such as {@code protective-earth}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public Optional<Limit> limit() {
    return limit;
  }

  /** The item of this name; blanks, underscores and capitals do not matter. */
  public static Optional<SafetyItem> named(String name) {
    String id = name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    return Arrays.stream(values()).filter(item -> item.id().equals(id)).findFirst();
  }

  /** The items that concern a spindle so fed, in the order of the list. */
  public static List<SafetyItem> of(Fed fed) {
    return Arrays.stream(values()).filter(item -> item.concerns(fed)).toList();
  }

  /** What of its supply makes a spindle have it. */
  public When when() {
    return when;
  }

  private boolean concerns(Fed fed) {
    return switch (when) {
      case ALWAYS -> true;
      case MAINS -> fed.mains();
      case DRIVE -> fed.drive();
      case BRUSHES -> fed.brushes();
    };
  }
}
