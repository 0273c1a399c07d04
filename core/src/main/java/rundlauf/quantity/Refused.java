package rundlauf.quantity;

/**
 * Input that cannot be used. Carries a saying (what was found, what is accepted; its remedy has the
 * same code) and the place.
 */
public final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Saying saying;
  private final transient Place place;

  public Refused(Saying saying, Place place) {
    super(saying.code() + " at " + place);
    this.saying = saying;
    this.place = place;
  }

  public static Refused at(Place place, String code, Arg... args) {
    return new Refused(Saying.of(code, place.field(), args), place);
  }

  public Saying saying() {
    return saying;
  }

  public Place place() {
    return place;
  }
}
