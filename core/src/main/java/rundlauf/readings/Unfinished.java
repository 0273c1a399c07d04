package rundlauf.readings;

import java.util.List;
import rundlauf.quantity.Refused;

/** Which refusals say only that a trial is not taken to its end: further readings mend them. */
public final class Unfinished {
  private static final List<String> CODES =
      List.of(
          "readings-missing",
          "no-rows",
          "all-rows-struck",
          "too-few-readings",
          "runout-too-few-readings",
          "too-few-positions",
          "turn-not-covered",
          "growth-few-times",
          "no-difference-of-load",
          "side-load-no-load",
          "side-load-one-load",
          "axial-dial-backward",
          "speed-never-turned",
          "no-items");

  private Unfinished() {}

  /** Whether further readings may mend what was refused. */
  public static boolean is(Refused refused) {
    return CODES.contains(refused.saying().code());
  }
}
