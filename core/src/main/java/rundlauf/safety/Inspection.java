package rundlauf.safety;

import java.util.List;
import java.util.Map;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;

/**
 * What an inspection gives.
 *
 * @param hold do not power
 * @param because every reason for the hold, in the words of its item
 */
public record Inspection(
    TrialHead head,
    InspectionReadings readings,
    boolean hold,
    List<Saying> because,
    List<Saying> cautions,
    List<Saying> advice)
    implements Reduced {
  public Inspection {
    because = List.copyOf(because);
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  @Override
  public Map<String, Figure> figures() {
    return Map.of();
  }

  @Override
  public Inspection withCautions(List<Saying> more) {
    return new Inspection(head, readings, hold, because, Reduced.joined(more, cautions), advice);
  }
}
