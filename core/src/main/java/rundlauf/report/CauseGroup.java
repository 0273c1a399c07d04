package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;

/**
 * Causes of one kind taken together: the scatter of nine sweeps is one thing to a reader, though it
 * is nine independent causes. What belongs to an indicator or a rig stays its own.
 *
 * @param u combined standard uncertainty, SI
 * @param share of the variance, 0 to 1
 */
record CauseGroup(Saying name, double u, double share) {
  /** A vector's cause acts along it and across it; to a reader that is one kind. */
  private static final String ACROSS = "-across";

  private static final String ALONG = "-along";

  /** Our choice: a smaller share of the variance moves no digit that is shown. */
  private static final double LEAST = 0.005;

  private record Kind(String part, String owner) {}

  /**
   * The kinds of cause in a figure's budget, largest first; those too small to matter as one, last.
   * None for a figure that is missing or exact.
   *
   * @param file of the trial: its own causes are named without it
   */
  static List<CauseGroup> of(Figure figure, String file) {
    Map<Kind, Double> squares = new LinkedHashMap<>();
    double variance = 0;
    for (Figure.Share s : figure.budget()) {
      squares.merge(kind(s.cause(), file), s.u() * s.u(), Double::sum);
      variance += s.u() * s.u();
    }
    return variance == 0 ? List.of() : groups(squares, variance);
  }

  private static List<CauseGroup> groups(Map<Kind, Double> squares, double variance) {
    List<Map.Entry<Kind, Double>> sorted = new ArrayList<>(squares.entrySet());
    sorted.sort(Map.Entry.<Kind, Double>comparingByValue().reversed());
    List<CauseGroup> groups = new ArrayList<>();
    double rest = 0;
    for (var e : sorted) {
      if (e.getValue() >= LEAST * variance) {
        groups.add(group(name(e.getKey()), e.getValue(), variance));
      } else {
        rest += e.getValue();
      }
    }
    if (rest > 0) {
      groups.add(group(Saying.of("report-cause-rest", ""), rest, variance));
    }
    return groups;
  }

  private static CauseGroup group(Saying name, double square, double variance) {
    return new CauseGroup(name, Math.sqrt(square), square / variance);
  }

  private static Kind kind(Cause cause, String file) {
    String part = cause.part();
    String stem =
        part.endsWith(ACROSS) ? part.substring(0, part.length() - ACROSS.length()) + ALONG : part;
    return new Kind(stem, owner(cause.record(), file));
  }

  /** Whose cause it is; empty where it is the trial's own. */
  private static String owner(String record, String file) {
    return record.startsWith(file) ? "" : record.substring(record.indexOf('/') + 1);
  }

  private static Saying name(Kind kind) {
    Arg part = Arg.term(kind.part());
    return kind.owner().isEmpty()
        ? Saying.of("report-cause", "", part)
        : Saying.of("report-cause-of", "", part, Arg.of(kind.owner()));
  }
}
