package rundlauf.files;

import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** A path that stays within its folder. */
final class InnerPath {
  private static final int LONGEST = 200;

  private InnerPath() {}

  /** The path as typed, or a refusal when it leads out or means different things to systems. */
  static String of(String typed, Place place) {
    boolean strange =
        typed.isEmpty()
            || typed.length() > LONGEST
            || typed.indexOf('\\') >= 0
            || typed.indexOf(':') >= 0
            || typed.chars().anyMatch(Character::isISOControl);
    List<String> parts = List.of(typed.split("/", -1));
    if (strange || parts.contains("") || parts.contains("..") || parts.contains(".")) {
      throw Refused.at(place, "path-leads-out", Arg.typed(typed));
    }
    return typed;
  }
}
