package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/**
 * A figure from trial to trial.
 *
 * @param value how it is printed
 * @param moments the oldest first
 */
public record HistoryChart(
    String id, Saying caption, Saying summary, Scale value, List<Moment> moments, Table twin)
    implements Chart {
  public HistoryChart {
    moments = List.copyOf(moments);
  }

  /**
   * A figure as one trial told it, SI.
   *
   * @param date as typed
   * @param low lower end of its interval
   * @param high upper end
   */
  public record Moment(String date, double value, double low, double high) {}
}
