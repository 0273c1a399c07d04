package rundlauf.wire;

import java.util.List;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.Runout;

/** The figures of a runout trial. */
final class RunoutFigures {
  private RunoutFigures() {}

  static List<Saying> write(JsonLine json, Runout runout) {
    json.list("stations", runout.stations(), station -> station(json, station));
    json.object("axis", () -> axis(json, runout.axis()));
    json.list("parts", runout.parts(), part -> part(json, part));
    json.figure("clampingScatter", runout.clampingScatter());
    json.object("bestClocking", () -> bestClocking(json, runout.bestClocking()));
    json.object(
        "nextClamping",
        () -> {
          json.number("at_mm", runout.nextClamping().at(), Unit.MILLIMETRE);
          json.figure("eccentricity", runout.nextClamping().eccentricity());
          json.figure("tir", runout.nextClamping().tir());
        });
    VerdictList.write(json, runout.verdicts());
    return List.of();
  }

  private static void station(JsonLine json, Runout.Station station) {
    var sweep = station.sweep();
    json.number("station_mm", sweep.station(), Unit.MILLIMETRE);
    json.count("clamping", sweep.clamping());
    json.number("collet_deg", sweep.collet(), Unit.DEGREE);
    json.number("shank_deg", sweep.shank(), Unit.DEGREE);
    json.count("readings", sweep.reading().size());
    json.figure("swing", station.swing());
    json.figure("tir", station.tir());
    json.figure("eccentricity", station.eccentricity());
    json.figure("highSpot", station.highSpot());
    json.list(
        "harmonics",
        station.harmonics(),
        harmonic -> {
          json.count("order", harmonic.order());
          json.figure("amplitude", harmonic.amplitude());
          json.figure("highSpot", harmonic.highSpot());
        });
    json.figure("scatter", station.scatter());
    json.figure("synchronous", station.form().synchronous());
    json.figure("asynchronous", station.form().asynchronous());
    json.object("roundness", () -> station.form().roundness().forEach(json::figure));
  }

  private static void axis(JsonLine json, Runout.Axis axis) {
    json.figure("tilt", axis.tilt());
    json.figure("tiltHighSpot", axis.tiltHighSpot());
    json.object(
        "tip",
        () -> {
          json.number("distance_mm", axis.tip().distance(), Unit.MILLIMETRE);
          json.figure("tir", axis.tip().tir());
          json.figure("eccentricity", axis.tip().eccentricity());
          json.figure("highSpot", axis.tip().highSpot());
        });
  }

  private static void part(JsonLine json, Runout.Part part) {
    json.text("part", part.name());
    json.number("station_mm", part.station(), Unit.MILLIMETRE);
    json.figure("eccentricity", part.eccentricity());
    json.figure("highSpot", part.highSpot());
  }

  private static void bestClocking(JsonLine json, BestClocking best) {
    json.number("station_mm", best.station(), Unit.MILLIMETRE);
    json.number("collet_deg", best.collet(), Unit.DEGREE);
    json.number("shank_deg", best.shank(), Unit.DEGREE);
    json.figure("tir", best.tir());
    json.figure("insteadOf", best.insteadOf());
    if (best.tir() instanceof Missing missing) {
      json.why("why", missing.why());
    }
  }
}
