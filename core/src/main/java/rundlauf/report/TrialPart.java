package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rundlauf.bench.EntryTexts;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
import rundlauf.reduce.growth.Growth;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.report.Remarks.Remark;
import rundlauf.report.Remarks.Tone;
import rundlauf.safety.Inspection;

/** One trial: its cautions, figures, charts and advice. */
final class TrialPart {
  private TrialPart() {}

  /** Names the trial by its title; by its setup and date, or its file, where it has none. */
  static Saying heading(Sheet sheet) {
    String kind = sheet.reducedKind().map(TrialKind::word).orElse("other");
    return Saying.of("report-trial-" + kind, "", Arg.of(name(sheet)));
  }

  private static String name(Sheet sheet) {
    Map<String, String> typed = EntryTexts.all(sheet.outcome().trial().document());
    String title = typed.getOrDefault("title", "").strip();
    String setup = typed.getOrDefault("setup", "").strip();
    String date = typed.getOrDefault("date", "").strip();
    if (!title.isEmpty()) {
      return title;
    }
    return setup.isEmpty() || date.isEmpty() ? sheet.file() : setup + ", " + date;
  }

  static Section section(Sheet sheet) {
    List<Block> blocks = new ArrayList<>();
    if (sheet.outcome() instanceof Outcome.Unusable unusable) {
      blocks.add(refused(unusable));
    }
    sheet.reduced().ifPresent(reduced -> addResult(sheet, reduced, blocks));
    Cell source = new Cell.Link(Saying.of("report-to-readings", ""), sheet.readings());
    blocks.add(new Remarks(Tone.NOTE, List.of(Remark.of(source))));
    return Section.of(sheet.section(), heading(sheet), blocks);
  }

  private static Block refused(Outcome.Unusable unusable) {
    Saying said = unusable.refused().saying();
    if (LivePart.NONE_TAKEN.contains(said.code())) {
      return Remarks.of(Tone.NOTE, List.of(Saying.of("report-none-taken", "")));
    }
    Saying remedy = new Saying(said.code() + ".remedy", said.about(), said.args());
    return Remarks.of(Tone.CAUTION, List.of(Saying.of("report-trial-refused", ""), said, remedy));
  }

  private static void addResult(Sheet sheet, Reduced reduced, List<Block> blocks) {
    if (reduced instanceof Inspection inspection) {
      blocks.addAll(InspectionPart.blocks(sheet, inspection));
      return;
    }
    addRemarks(Tone.CAUTION, reduced.cautions(), blocks);
    if (reduced instanceof Runout runout) {
      blocks.addAll(RunoutPart.blocks(sheet, runout));
    } else if (reduced instanceof SideLoad load) {
      blocks.addAll(SideLoadPart.blocks(sheet, load));
    } else if (reduced instanceof Axial axial) {
      blocks.addAll(AxialPart.blocks(sheet, axial));
    } else if (reduced instanceof Growth growth) {
      blocks.addAll(GrowthPart.blocks(sheet, growth));
    } else if (reduced instanceof Speed speed) {
      blocks.addAll(SpeedPart.blocks(sheet, speed));
    } else {
      blocks.add(FigureTable.of(sheet, reduced.figures()));
    }
    addRemarks(Tone.ADVICE, reduced.advice(), blocks);
  }

  static void addRemarks(Tone tone, List<Saying> sayings, List<Block> blocks) {
    if (!sayings.isEmpty()) {
      blocks.add(Remarks.of(tone, sayings));
    }
  }
}
