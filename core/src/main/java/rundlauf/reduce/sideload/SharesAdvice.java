package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Saying;
import rundlauf.reduce.sideload.Shares.Share;

/** What shares rest on, which of them is the largest, and what would part them further. */
final class SharesAdvice {
  private static final String ABOUT = "shares";

  private SharesAdvice() {}

  static List<Saying> of(List<Travel> row, List<Share> shares) {
    List<Saying> advice = new ArrayList<>();
    largest(shares).ifPresent(joint -> advice.add(most(joint)));
    List<String> once =
        row.stream()
            .filter(t -> t.kind() != Travel.Kind.KNOWN)
            .map(t -> Row.at(t.position()))
            .toList();
    if (!once.isEmpty()) {
      advice.add(Saying.of("shares-one-place", ABOUT, Arg.list(once)));
    }
    for (int i = 0; i + 1 < row.size(); i++) {
      int front = row.get(i).position();
      int behind = row.get(i + 1).position();
      List<String> unread = Row.unread(front, behind);
      if (!unread.isEmpty()) {
        advice.add(
            Saying.of("shares-joined", ABOUT, Arg.of(Row.joints(front, behind)), Arg.list(unread)));
      }
    }
    return advice;
  }

  private static Saying most(String joint) {
    return joint.equals(Row.SHANK)
        ? Saying.of("shares-shank-most", ABOUT)
        : Saying.of("shares-most", ABOUT, Arg.of(joint));
  }

  /** The joint that gives way most: its whole interval over those of all others. */
  private static Optional<String> largest(List<Share> shares) {
    return shares.stream()
        .filter(s -> s.share().known())
        .filter(
            s ->
                shares.stream()
                    .allMatch(
                        o -> o == s || interval(o.share()).high() < interval(s.share()).low()))
        .map(Share::joint)
        .findFirst();
  }

  private static Interval interval(Figure figure) {
    return figure.estimate().orElseThrow().interval();
  }
}
