package rundlauf.character;

import java.util.List;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * One trait of a setup.
 *
 * @param figure SI; missing, with why, where it is not known
 * @param origin where it comes from
 * @param from what it was taken from: trials by name, a table, what was assumed; one saying each
 */
public record Trait(Figure figure, Origin origin, List<Saying> from) {
  public Trait {
    from = List.copyOf(from);
    if ((origin == Origin.MISSING) == figure.known()) {
      throw new IllegalArgumentException("a trait that is " + origin + " with " + figure);
    }
  }

  /** A trait from trials. */
  public static Trait measured(Figure figure, Saying... from) {
    return new Trait(figure, Origin.MEASURED, List.of(from));
  }

  /** A trait as it was typed. */
  public static Trait entered(Figure figure) {
    return new Trait(figure, Origin.ENTERED, List.of());
  }

  /** A trait that is assumed, and what is assumed. */
  public static Trait assumed(Figure figure, Saying... assumption) {
    return new Trait(figure, Origin.ASSUMED, List.of(assumption));
  }

  /** A trait that is not known, and why. */
  public static Trait missing(Unit unit, Saying why) {
    return new Trait(new Missing(unit, why), Origin.MISSING, List.of());
  }

  public boolean known() {
    return origin != Origin.MISSING;
  }

  public boolean assumed() {
    return origin == Origin.ASSUMED;
  }

  /**
   * Its values, draw by draw; SI.
   *
   * @param otherwise what stands for a missing one, all the same
   */
  public Samples draws(Draws draws, double otherwise) {
    return figure instanceof Figure.Drawable drawable
        ? drawable.draws(draws)
        : Samples.generate(draws.count(), i -> otherwise);
  }

  /** Its central value, SI; {@code otherwise} when it is missing. */
  public double central(double otherwise) {
    return known() ? figure.value() : otherwise;
  }
}
