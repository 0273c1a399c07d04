package rundlauf.quantity;

import rundlauf.maths.Draws;
import rundlauf.maths.Samples;

/**
 * One independent cause of doubt: it has a stable id and, by it, its own stream of draws. Two
 * figures that share a cause share its draws.
 *
 * @param record what it belongs to, such as {@code indicator/plunger dial} or {@code trials/a.yaml
 *     station 5 mm}
 * @param part which property of it, a code with a word of its own in the bundle, such as {@code
 *     limit-of-error}
 * @param shape how it is distributed
 */
public record Cause(String record, String part, Shape shape) {
  /** How a cause is distributed. */
  public sealed interface Shape {
    /** Normal; standard deviation 1 in its own draws. */
    record Normal() implements Shape {}

    /** Rectangular; standard deviation 1 in its own draws. */
    record Rectangular() implements Shape {}

    /**
     * Student's t on so many degrees of freedom: a scatter estimated from few readings (JCGM
     * 101:2008, 6.4.9).
     */
    record Student(double dof) implements Shape {}
  }

  public static Cause normal(String record, String part) {
    return new Cause(record, part, new Shape.Normal());
  }

  public static Cause rectangular(String record, String part) {
    return new Cause(record, part, new Shape.Rectangular());
  }

  public static Cause scatter(String record, String part, double dof) {
    return new Cause(record, part, new Shape.Student(dof));
  }

  public String id() {
    return record + "/" + part;
  }

  /** Degrees of freedom; infinite for what is not estimated from scatter. */
  public double dof() {
    return shape instanceof Shape.Student s ? s.dof() : Double.POSITIVE_INFINITY;
  }

  /** Its draws, to be multiplied with its effect (1 u). */
  public Samples draws(Draws draws) {
    var stream = draws.stream(id());
    if (shape instanceof Shape.Rectangular) {
      return stream.rectangulars(draws.count());
    }
    return shape instanceof Shape.Student s
        ? stream.students(draws.count(), s.dof())
        : stream.gaussians(draws.count());
  }
}
