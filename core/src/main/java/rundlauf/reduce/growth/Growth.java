package rundlauf.reduce.growth;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.CoarseRise;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;

/**
 * What a growth trial gives.
 *
 * @param readings what it was reduced from, for the plots
 * @param growth how far the nose moves from the start until it is as warm as it gets, signed as the
 *     dial reads [m]; where the readings cannot tell its end, from what was seen on
 * @param timeConstant after which 63 % of it is done [s]
 * @param settledAfter when less than 5 % of it is left, from the start [s]
 * @param perKelvin growth over rise of temperature, where that was read [m/K]
 * @param curve draws of the fitted curve, its times from the start [s, m]
 */
public record Growth(
    TrialHead head,
    GrowthReadings readings,
    Figure growth,
    Figure timeConstant,
    Figure settledAfter,
    Figure perKelvin,
    CoarseRise curve,
    List<Saying> cautions,
    List<Saying> advice)
    implements Reduced {

  public Growth {
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  @Override
  public Map<String, Figure> figures() {
    Map<String, Figure> all = new LinkedHashMap<>();
    all.put("growth", growth);
    all.put("timeConstant", timeConstant);
    all.put("settledAfter", settledAfter);
    all.put("perKelvin", perKelvin);
    return all;
  }

  @Override
  public Growth withCautions(List<Saying> more) {
    return new Growth(
        head,
        readings,
        growth,
        timeConstant,
        settledAfter,
        perKelvin,
        curve,
        Reduced.joined(more, cautions),
        advice);
  }
}
