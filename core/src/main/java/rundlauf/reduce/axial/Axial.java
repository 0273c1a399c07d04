package rundlauf.reduce.axial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.push.Line;
import rundlauf.reduce.push.Straightness;

/**
 * What an axial trial gives.
 *
 * @param readings what it was reduced from, for the plots
 * @param endPlay the gap between the zero-load intercepts of push and pull, or a lower bound [m]
 * @param axialStiffness everything between load and reference, along the spindle's axis [N/m]
 * @param compliance its inverse [m/N]
 * @param hysteresis loop width at equal load [m]
 * @param straightness lack of fit against a straight line; empty when the readings cannot bear the
 *     test
 * @param lines the fitted straight lines, for the plots
 */
public record Axial(
    TrialHead head,
    LoadReadings readings,
    Figure endPlay,
    Figure axialStiffness,
    Figure compliance,
    Figure hysteresis,
    Optional<Straightness> straightness,
    List<Line> lines,
    List<Saying> cautions,
    List<Saying> advice)
    implements Reduced {

  public Axial {
    lines = List.copyOf(lines);
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  @Override
  public Map<String, Figure> figures() {
    Map<String, Figure> all = new LinkedHashMap<>();
    all.put("endPlay", endPlay);
    all.put("axialStiffness", axialStiffness);
    all.put("compliance", compliance);
    all.put("hysteresis", hysteresis);
    return all;
  }

  @Override
  public Axial withCautions(List<Saying> more) {
    return new Axial(
        head,
        readings,
        endPlay,
        axialStiffness,
        compliance,
        hysteresis,
        straightness,
        lines,
        Reduced.joined(more, cautions),
        advice);
  }
}
