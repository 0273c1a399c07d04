package rundlauf.quantity;

import java.util.List;

/**
 * Something to be said to the user, without its wording.
 *
 * @param code stable, lower case with hyphens; also the key of its sentence
 * @param about the figure or the part it is about, such as {@code axis}; empty when it is about the
 *     whole
 * @param args what the sentence names, in its order
 */
public record Saying(String code, String about, List<Arg> args) {
  public Saying {
    args = List.copyOf(args);
  }

  public static Saying of(String code, String about, Arg... args) {
    return new Saying(code, about, List.of(args));
  }
}
