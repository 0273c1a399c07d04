package rundlauf.reduce.sideload;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.push.Line;
import rundlauf.reduce.push.Straightness;

/**
 * What a side-load trial gives.
 *
 * @param readings what it was reduced from, for the plots
 * @param stiffness everything between load and reference [N/m]
 * @param compliance its inverse [m/N]
 * @param play the gap between the zero-load intercepts of opposite pushes, or a lower bound [m]
 * @param hysteresis loop width at equal load [m]
 * @param straightness lack of fit against a straight line; empty when the readings cannot bear the
 *     test
 * @param shankCompliance the shank's own bending [m/N]
 * @param setupStiffness without the shank's own bending [N/m]
 * @param lines the fitted straight lines, for the plots
 * @param compliances by direction, joint and distance
 */
public record SideLoad(
    TrialHead head,
    LoadReadings readings,
    Figure stiffness,
    Figure compliance,
    Figure play,
    Figure hysteresis,
    Optional<Straightness> straightness,
    Figure shankCompliance,
    Figure setupStiffness,
    List<Line> lines,
    Compliances compliances,
    List<Saying> cautions,
    List<Saying> advice)
    implements Reduced {

  /** Of one place and one direction alone. */
  public SideLoad(
      TrialHead head,
      LoadReadings readings,
      Figure stiffness,
      Figure compliance,
      Figure play,
      Figure hysteresis,
      Optional<Straightness> straightness,
      Figure shankCompliance,
      Figure setupStiffness,
      List<Line> lines,
      List<Saying> cautions,
      List<Saying> advice) {
    this(
        head,
        readings,
        stiffness,
        compliance,
        play,
        hysteresis,
        straightness,
        shankCompliance,
        setupStiffness,
        lines,
        Compliances.none(Saying.of("directions-too-few", "directions", Arg.of(1))),
        cautions,
        advice);
  }

  public SideLoad {
    lines = List.copyOf(lines);
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  @Override
  public Map<String, Figure> figures() {
    Map<String, Figure> all = new LinkedHashMap<>();
    all.put("stiffness", stiffness);
    all.put("compliance", compliance);
    all.put("play", play);
    all.put("hysteresis", hysteresis);
    all.put("shank.compliance", shankCompliance);
    all.put("setupStiffness", setupStiffness);
    all.putAll(compliances.figures());
    return all;
  }

  @Override
  public SideLoad withCautions(List<Saying> more) {
    return new SideLoad(
        head,
        readings,
        stiffness,
        compliance,
        play,
        hysteresis,
        straightness,
        shankCompliance,
        setupStiffness,
        lines,
        compliances,
        Reduced.joined(more, cautions),
        advice);
  }
}
