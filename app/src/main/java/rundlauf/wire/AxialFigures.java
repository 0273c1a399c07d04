package rundlauf.wire;

import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.reduce.axial.Axial;

/** The figures of an axial trial. */
final class AxialFigures {
  private AxialFigures() {}

  static List<Saying> write(JsonLine json, Axial axial) {
    json.figure("endPlay", axial.endPlay());
    json.figure("axialStiffness", axial.axialStiffness());
    json.figure("compliance", axial.compliance());
    json.figure("hysteresis", axial.hysteresis());
    SideLoadFigures.straightness(json, axial.straightness());
    return List.of();
  }
}
