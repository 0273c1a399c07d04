package rundlauf.wire;

import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.reduce.growth.Growth;

/** The figures of a growth trial. */
final class GrowthFigures {
  private GrowthFigures() {}

  static List<Saying> write(JsonLine json, Growth growth) {
    json.figure("growth", growth.growth());
    json.figure("timeConstant", growth.timeConstant());
    json.figure("settledAfter", growth.settledAfter());
    json.figure("perKelvin", growth.perKelvin());
    return List.of();
  }
}
