package rundlauf.render.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.Form;
import rundlauf.reduce.runout.Runout;

/** The figures of a runout trial as text: the tip first, then the axis, then every sweep. */
final class RunoutText {
  /** So many sweeps are shown with all their figures, more with one line each; our choice. */
  private static final int WHOLE = 3;

  private RunoutText() {}

  static void write(Sheet sheet, Runout runout) {
    tip(sheet, runout.axis().tip());
    sheet.group("heading-axis", List.of(), axis(runout.axis()));
    if (runout.stations().size() <= WHOLE) {
      runout.stations().forEach(station -> station(sheet, station));
    } else {
      sheet.heading("heading-sweeps");
      runout.stations().forEach(station -> row(sheet, station));
    }
    PartsText.write(sheet, runout);
    sheet.group("heading-next-clamping", List.of(), clampings(runout));
    VerdictText.write(sheet, runout.verdicts());
    blame(sheet, runout);
  }

  private static void tip(Sheet sheet, Runout.Tip tip) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("label-tir", tip.tir());
    figures.put("label-eccentricity", tip.eccentricity());
    figures.put("label-high-spot", tip.highSpot());
    if (tip.distance().isPresent()) {
      var distance = Arg.of(tip.distance().getAsDouble(), Unit.MILLIMETRE);
      sheet.group("heading-tip", List.of(distance), figures);
    } else {
      sheet.group("heading-tip-nowhere", List.of(), figures);
    }
  }

  private static Map<String, Figure> axis(Runout.Axis axis) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("label-tilt", axis.tilt());
    figures.put("label-tilt-high-spot", axis.tiltHighSpot());
    return figures;
  }

  private static void station(Sheet sheet, Runout.Station station) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("label-swing", station.swing());
    figures.put("label-tir", station.tir());
    figures.put("label-eccentricity", station.eccentricity());
    figures.put("label-high-spot", station.highSpot());
    figures.put("label-scatter", station.scatter());
    sheet.line("");
    sheet.line(where(sheet, station));
    sheet.figures(figures);
    for (Runout.Harmonic harmonic : station.harmonics()) {
      String label = sheet.word("label-harmonic", Arg.of(harmonic.order()));
      sheet.figure(label, harmonic.amplitude());
    }
    form(sheet, station.form());
  }

  /** Its roundness; what several turns tell only where several were read. */
  private static void form(Sheet sheet, Form form) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("label-roundness", form.mzc());
    if (form.synchronous().known()) {
      figures.put("label-synchronous", form.synchronous());
      figures.put("label-asynchronous", form.asynchronous());
    }
    sheet.figures(figures);
  }

  /** A sweep in one line: what was read, and where it was highest. */
  private static void row(Sheet sheet, Runout.Station station) {
    List<String> words = new ArrayList<>();
    Figure tir = station.tir().known() ? station.tir() : station.swing();
    words.add(sheet.word("label-tir") + " " + sheet.value(tir));
    if (station.highSpot().known()) {
      words.add(sheet.word("label-high-spot") + " " + sheet.value(station.highSpot()));
    }
    sheet.row(String.join(", ", place(sheet, station)), String.join(", ", words));
  }

  private static String where(Sheet sheet, Runout.Station station) {
    List<String> parts = place(sheet, station);
    if (station.sweep().reading().size() > 0) {
      parts.add(sheet.word("where-readings", Arg.of(station.sweep().reading().size())));
    }
    return String.join(", ", parts);
  }

  private static List<String> place(Sheet sheet, Runout.Station station) {
    var sweep = station.sweep();
    List<String> parts = new ArrayList<>();
    sweep
        .station()
        .ifPresentOrElse(
            z -> parts.add(sheet.word("where-station", Arg.of(z, Unit.MILLIMETRE))),
            () -> parts.add(sheet.word("where-unsaid")));
    parts.add(sheet.word("where-clamping", Arg.of(sweep.clamping())));
    sweep.collet().ifPresent(a -> parts.add(sheet.word("where-collet", Arg.of(a, Unit.DEGREE))));
    sweep.shank().ifPresent(a -> parts.add(sheet.word("where-shank", Arg.of(a, Unit.DEGREE))));
    return parts;
  }

  private static Map<String, Figure> clampings(Runout runout) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("label-tir", runout.nextClamping().tir());
    figures.put("label-eccentricity", runout.nextClamping().eccentricity());
    figures.put("label-clamping-scatter", runout.clampingScatter());
    return figures;
  }

  /** The tip's doubt where it is known, else that of the first sweep. */
  private static void blame(Sheet sheet, Runout runout) {
    if (runout.axis().tip().tir().known()) {
      Blame.write(sheet, sheet.word("blame-tip"), runout.axis().tip().tir(), runout.head().name());
    } else {
      var first = runout.stations().get(0);
      Blame.write(
          sheet,
          sheet.word("blame-sweep", Arg.of(where(sheet, first))),
          first.tir(),
          runout.head().name());
    }
  }
}
