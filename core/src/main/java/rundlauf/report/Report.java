package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/**
 * What a report says, in its order.
 *
 * @param title names the bench
 * @param notices what stands above everything, such as that the data are invented
 * @param sections the cautions first
 */
public record Report(Saying title, List<Saying> notices, List<Section> sections) {
  public Report {
    notices = List.copyOf(notices);
    sections = List.copyOf(sections);
  }
}
