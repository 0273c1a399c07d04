package rundlauf.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.readings.RunoutReadings;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
import rundlauf.reduce.growth.Growth;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.report.Remarks.Tone;
import rundlauf.report.Table.Row;
import rundlauf.safety.Inspection;

/** A trial while it is taken: its main figures so far, and the drawing of what is being read. */
public final class LivePart {
  private static final Scale SHARE = new Scale(Unit.PERCENT, 0);
  static final List<String> NONE_TAKEN =
      List.of("readings-missing", "no-rows", "all-rows-struck", "no-items");

  private LivePart() {}

  /** What the first {@code count} readings tell, where all of them together tell nothing yet. */
  public record Earlier(int count, Reduced reduced) {}

  /**
   * What the readings tell so far; where they tell nothing yet, why, and what told before.
   *
   * @param begun the sweep that is being taken; drawn while the readings bear no figure
   */
  public static Section of(
      Outcome outcome, Optional<Earlier> earlier, Optional<RunoutReadings.Sweep> begun) {
    List<Block> blocks = new ArrayList<>();
    if (outcome instanceof Outcome.Figures figures) {
      blocks.addAll(told(outcome, figures.reduced()));
    } else {
      blocks.add(notYet((Outcome.Unusable) outcome));
      begun.ifPresent(sweep -> blocks.add(BegunTurn.of(sweep, "chart-begun")));
      earlier.ifPresent(
          e -> {
            Saying first = Saying.of("report-first-readings", "", Arg.of(e.count()));
            blocks.add(Remarks.of(Tone.NOTE, List.of(first)));
            blocks.addAll(told(new Outcome.Figures(outcome.trial(), e.reduced()), e.reduced()));
          });
    }
    return Section.of("so-far", Saying.of("report-so-far", ""), blocks);
  }

  private static Block notYet(Outcome.Unusable unusable) {
    Saying said = unusable.refused().saying();
    Saying nothing = Saying.of("report-nothing-yet", "");
    if (NONE_TAKEN.contains(said.code())) {
      return Remarks.of(Tone.NOTE, List.of(nothing));
    }
    Saying remedy = new Saying(said.code() + ".remedy", said.about(), said.args());
    return Remarks.of(Tone.NOTE, List.of(nothing, said, remedy));
  }

  private static List<Block> told(Outcome outcome, Reduced reduced) {
    Sheet sheet = new Sheet(1, "", outcome, Optional.empty());
    if (reduced instanceof Inspection inspection) {
      return InspectionPart.blocks(sheet, inspection);
    }
    List<Block> blocks = new ArrayList<>();
    Map<String, Figure> main = main(reduced);
    blocks.add(figures(sheet, main));
    limit(sheet, main).ifPresent(blocks::add);
    chart(sheet, reduced).ifPresent(blocks::add);
    joints(sheet, reduced).ifPresent(blocks::add);
    TrialPart.addRemarks(Tone.CAUTION, reduced.cautions(), blocks);
    return blocks;
  }

  /** The figures that the trial is taken for, by the codes of their names. */
  private static Map<String, Figure> main(Reduced reduced) {
    Map<String, Figure> main = new LinkedHashMap<>();
    if (reduced instanceof Runout runout) {
      Runout.Station last = runout.last();
      main.put("figure.stations.tir", last.tir());
      main.put("figure.stations.eccentricity", last.eccentricity());
      main.put("figure.stations.highSpot", last.highSpot());
    } else if (reduced instanceof SideLoad load) {
      main.put("figure.stiffness", load.stiffness());
      main.put("figure.play", load.play());
    } else if (reduced instanceof Axial axial) {
      main.put("figure.endPlay", axial.endPlay());
      main.put("figure.axialStiffness", axial.axialStiffness());
    } else if (reduced instanceof Growth) {
      reduced.figures().forEach((path, figure) -> main.put("figure." + path, figure));
    } else if (reduced instanceof Speed speed) {
      main.put("figure.usable.min", speed.usableMin());
      main.put("figure.usable.max", speed.usableMax());
    }
    return main;
  }

  private static Table figures(Sheet sheet, Map<String, Figure> main) {
    List<Row> rows = new ArrayList<>();
    main.forEach(
        (name, figure) ->
            rows.add(Row.of(new Cell.Said(Saying.of(name, "")), sheet.shown(figure))));
    List<Cell> columns =
        List.of(Table.heading("report-column-figure"), Table.heading("report-column-value"));
    return Table.of(Saying.of("report-so-far", ""), columns, rows, Table.Kind.FIGURES);
  }

  /** What is most to blame for the doubt of the first figure that is known. */
  private static Optional<Block> limit(Sheet sheet, Map<String, Figure> main) {
    for (Map.Entry<String, Figure> one : main.entrySet()) {
      Optional<CauseGroup> most = sheet.causes(one.getValue()).stream().findFirst();
      if (most.isPresent()) {
        Remarks.Remark limits =
            Remarks.Remark.of(
                new Cell.Said(Saying.of("report-limits", "")),
                new Cell.Said(most.get().name()),
                new Cell.Number(most.get().share(), SHARE));
        return Optional.of(new Remarks(Tone.NOTE, List.of(limits)));
      }
    }
    return Optional.empty();
  }

  /** Which joint gives way, once the dial has gone from one body to another. */
  private static Optional<Chart> joints(Sheet sheet, Reduced reduced) {
    return reduced instanceof SideLoad load
            && load.readings().points().stream().map(Point::place).distinct().count() > 1
        ? SharesChart.of(sheet, load.compliances().shares())
        : Optional.empty();
  }

  private static Optional<Chart> chart(Sheet sheet, Reduced reduced) {
    if (reduced instanceof Runout runout) {
      return PolarCharts.last(sheet, runout);
    }
    if (reduced instanceof SideLoad load) {
      return Optional.of(LoadChart.of(sheet, load.readings().points(), load.lines()));
    }
    if (reduced instanceof Axial axial) {
      return Optional.of(LoadChart.of(sheet, axial.readings().points(), axial.lines()));
    }
    if (reduced instanceof Growth growth) {
      return Optional.of(GrowthPart.chart(sheet, growth));
    }
    return reduced instanceof Speed speed && !speed.curve().isEmpty()
        ? Optional.of(SpeedPart.chart(sheet, speed))
        : Optional.empty();
  }
}
