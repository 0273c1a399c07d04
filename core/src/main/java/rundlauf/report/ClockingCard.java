package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.report.Card.Line;

/** How to set the marks, on a card to take to the machine. */
final class ClockingCard {
  private static final String ASSUMED = "clamping-assumed";

  private ClockingCard() {}

  /** Nothing where no clocking is known. */
  static Optional<Block> of(Sheet sheet, BestClocking best) {
    if (!best.tir().known()) {
      return Optional.empty();
    }
    List<Line> lines = new ArrayList<>();
    lines.add(new Line(label("setup"), setup(sheet)));
    lines.add(new Line(label("spindle"), forward(0)));
    best.collet().ifPresent(angle -> lines.add(new Line(label("collet"), forward(angle))));
    best.shank().ifPresent(angle -> lines.add(new Line(label("shank"), forward(angle))));
    lines.add(new Line(label("tir"), sheet.shown(best.tir())));
    lines.add(new Line(label("instead"), sheet.shown(best.insteadOf())));
    at(best.station()).ifPresent(lines::add);
    lines.add(new Line(label("trial"), trial(sheet)));
    return Optional.of(
        new Card(
            "card-" + sheet.number(),
            Saying.of("report-card", ""),
            ring(sheet, best),
            lines,
            notes(sheet, best)));
  }

  private static MarkRing ring(Sheet sheet, BestClocking best) {
    return new MarkRing(
        sheet.chart("card"),
        Saying.of("report-card-ring", ""),
        sheet.forwardIsClockwise(),
        ClockingDials.ANGLE,
        ClockingDials.marks(new BestClocking.Marks(best.collet(), best.shank())));
  }

  private static Saying label(String name) {
    return Saying.of("report-card-" + name, "");
  }

  private static Cell setup(Sheet sheet) {
    return sheet
        .outcome()
        .setup()
        .<Cell>map(Cell.Typed::new)
        .orElse(new Cell.Said(Saying.of("report-card-no-setup", "")));
  }

  private static Cell forward(double angle) {
    return new Cell.Number(angle, ClockingDials.ANGLE);
  }

  private static Optional<Line> at(OptionalDouble station) {
    return station.isPresent()
        ? Optional.of(
            new Line(
                label("at"),
                new Cell.Said(
                    Saying.of(
                        "report-card-from-nut",
                        "",
                        Arg.of(station.getAsDouble(), Unit.MILLIMETRE)))))
        : Optional.empty();
  }

  private static Cell trial(Sheet sheet) {
    Arg file = Arg.of(sheet.file());
    Saying named =
        sheet.date().isEmpty()
            ? Saying.of("report-card-file", "", file)
            : Saying.of("report-card-file-of", "", file, Arg.of(sheet.date()));
    return new Cell.Said(named);
  }

  private static List<Saying> notes(Sheet sheet, BestClocking best) {
    List<Saying> notes = new ArrayList<>();
    notes.add(Saying.of("report-card-" + turning(sheet), ""));
    best.standings().stream()
        .map(BestClocking.Standing::part)
        .filter(part -> part.contains("+"))
        .forEach(part -> notes.add(Saying.of("report-card-joined", "", Arg.of(part))));
    if (best.tir().budget().stream().anyMatch(s -> s.cause().part().equals(ASSUMED))) {
      notes.add(Saying.of("report-card-scatter-assumed", ""));
    }
    if (overlap(best.tir(), best.insteadOf())) {
      notes.add(Saying.of("report-card-overlap", ""));
    }
    notes.add(Saying.of("report-card-check", ""));
    return notes;
  }

  private static String turning(Sheet sheet) {
    String seen = sheet.forwardIsClockwise() ? "clockwise" : "anticlockwise";
    return sheet.rotation().isPresent() ? seen : "rotation-assumed";
  }

  private static boolean overlap(Figure set, Figure instead) {
    return interval(set).high() > interval(instead).low();
  }

  private static Interval interval(Figure figure) {
    return figure.estimate().orElseThrow().interval();
  }
}
