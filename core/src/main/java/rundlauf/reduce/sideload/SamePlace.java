package rundlauf.reduce.sideload;

import java.util.List;

/** Lines of one place. */
final class SamePlace {
  private SamePlace() {}

  static List<Slope> as(Slope one, List<Slope> all) {
    return all.stream()
        .filter(
            s ->
                s.place().equals(one.place())
                    && s.at().equals(one.at())
                    && s.load().equals(one.load()))
        .toList();
  }
}
