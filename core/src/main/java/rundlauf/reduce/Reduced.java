package rundlauf.reduce;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialHead;

/** What every reduction gives, whatever it reduced. */
public interface Reduced {
  TrialHead head();

  /**
   * Every figure by its path in the output, such as {@code axis.tip.tir} or {@code
   * stations[0].tir}, in their order.
   */
  Map<String, Figure> figures();

  /** What must be looked at: the command ends with 4 when there is one. */
  List<Saying> cautions();

  /** What would make the figures better. */
  List<Saying> advice();

  /** The same with these cautions before its own. */
  Reduced withCautions(List<Saying> more);

  /** Both lists, one after the other. */
  static List<Saying> joined(List<Saying> first, List<Saying> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }
}
