package rundlauf.reduce.runout;

import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.quantity.Figure;
import rundlauf.reduce.runout.Runout.Station;

/** The figures of a runout trial by their paths in the output. */
final class RunoutPaths {
  private RunoutPaths() {}

  static Map<String, Figure> of(Runout runout) {
    Map<String, Figure> all = new LinkedHashMap<>();
    for (int i = 0; i < runout.stations().size(); i++) {
      Station s = runout.stations().get(i);
      String at = "stations[" + i + "].";
      all.put(at + "swing", s.swing());
      all.put(at + "tir", s.tir());
      all.put(at + "eccentricity", s.eccentricity());
      all.put(at + "highSpot", s.highSpot());
      all.put(at + "scatter", s.scatter());
      all.put(at + "synchronous", s.form().synchronous());
      all.put(at + "asynchronous", s.form().asynchronous());
      s.form().roundness().forEach((circle, f) -> all.put(at + "roundness." + circle, f));
    }
    all.put("axis.tilt", runout.axis().tilt());
    all.put("axis.tiltHighSpot", runout.axis().tiltHighSpot());
    all.put("axis.tip.tir", runout.axis().tip().tir());
    all.put("axis.tip.eccentricity", runout.axis().tip().eccentricity());
    all.put("axis.tip.highSpot", runout.axis().tip().highSpot());
    for (int i = 0; i < runout.parts().size(); i++) {
      all.put("parts[" + i + "].eccentricity", runout.parts().get(i).eccentricity());
      all.put("parts[" + i + "].highSpot", runout.parts().get(i).highSpot());
    }
    all.put("clampingScatter", runout.clampingScatter());
    all.put("bestClocking.tir", runout.bestClocking().tir());
    all.put("bestClocking.insteadOf", runout.bestClocking().insteadOf());
    all.put("nextClamping.eccentricity", runout.nextClamping().eccentricity());
    all.put("nextClamping.tir", runout.nextClamping().tir());
    return all;
  }
}
