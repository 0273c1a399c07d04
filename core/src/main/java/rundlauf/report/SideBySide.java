package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.report.Table.Row;

/** Every setup of the bench, as it turns and as it is pushed. */
final class SideBySide {
  /** A figure of the last trial of its kind that tells it. */
  private record Trait(String code, String kind, Function<Reduced, Optional<Figure>> of) {}

  private static final List<Trait> TURNED =
      List.of(
          new Trait("report-trait-tir-read", "runout", runout(SideBySide::readTir)),
          new Trait("report-trait-tir-tip", "runout", runout(r -> r.axis().tip().tir())),
          new Trait("report-trait-tir-next", "runout", runout(r -> r.nextClamping().tir())),
          new Trait("report-trait-tir-clocked", "runout", runout(r -> r.bestClocking().tir())));

  private static final List<Trait> PUSHED =
      List.of(
          new Trait("report-trait-stiffness", "side-load", sideLoad(SideLoad::stiffness)),
          new Trait("report-trait-play", "side-load", sideLoad(SideLoad::play)),
          new Trait("report-trait-axial", "axial", axial(Axial::axialStiffness)),
          new Trait("report-trait-end-play", "axial", axial(Axial::endPlay)),
          new Trait("report-trait-slowest", "speed", speed(Speed::usableMin)),
          new Trait("report-trait-fastest", "speed", speed(Speed::usableMax)));

  private SideBySide() {}

  static Section section(BenchResults results, List<Sheet> sheets) {
    if (results.bench().setups().isEmpty()) {
      Saying none = Saying.of("report-no-setup", "");
      return section(List.of(Remarks.of(Remarks.Tone.NOTE, List.of(none))));
    }
    Block turned = table("report-side-by-side-turned", TURNED, results, sheets);
    Block pushed = table("report-side-by-side-pushed", PUSHED, results, sheets);
    Saying how = Saying.of("report-side-by-side-how", "");
    return section(List.of(Remarks.of(Remarks.Tone.NOTE, List.of(how)), turned, pushed));
  }

  private static Section section(List<Block> blocks) {
    return Section.of("side-by-side", Saying.of("report-side-by-side", ""), blocks);
  }

  private static Block table(
      String caption, List<Trait> traits, BenchResults results, List<Sheet> sheets) {
    List<Cell> columns = new ArrayList<>();
    columns.add(Table.heading("report-column-setup"));
    columns.add(Table.heading("report-column-state"));
    traits.forEach(trait -> columns.add(Table.heading(trait.code())));
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < results.bench().setups().size(); i++) {
      rows.add(row(results, sheets, i, traits));
    }
    return Table.of(Saying.of(caption, ""), columns, rows, Table.Kind.FIGURES);
  }

  private static Row row(BenchResults results, List<Sheet> sheets, int number, List<Trait> traits) {
    var setup = results.bench().setups().get(number);
    List<Sheet> own = SetupSection.sheetsOf(setup.name(), sheets);
    List<Cell> cells = new ArrayList<>();
    cells.add(SetupSection.link(setup.name(), number));
    cells.add(state(results, sheets, setup.spindle()));
    traits.forEach(trait -> cells.add(cell(trait, own)));
    return new Row("", cells);
  }

  private static Cell state(BenchResults results, List<Sheet> sheets, String spindle) {
    SpindleStanding standing = SpindleStanding.of(results, sheets, spindle);
    Saying word = Saying.of("report-state-" + standing.standing().code(), "");
    return standing
        .last()
        .<Cell>map(sheet -> new Cell.Link(word, sheet.section()))
        .orElse(new Cell.Said(word));
  }

  private static Cell cell(Trait trait, List<Sheet> own) {
    List<Sheet> kind = own.stream().filter(s -> s.kind().equals(trait.kind())).toList();
    if (kind.isEmpty()) {
      return new Cell.Said(Saying.of("report-not-measured", ""));
    }
    List<Sheet> bearing = kind.stream().filter(s -> s.reduced().isPresent()).toList();
    if (bearing.isEmpty()) {
      return new Cell.Link(Saying.of("report-refused", ""), Sheet.last(kind).section());
    }
    List<Sheet> telling =
        bearing.stream()
            .filter(s -> s.reduced().flatMap(trait.of()).filter(Figure::known).isPresent())
            .toList();
    Sheet last = Sheet.last(telling.isEmpty() ? bearing : telling);
    Figure figure = last.reduced().flatMap(trait.of()).orElseThrow();
    return figure instanceof Missing
        ? new Cell.Link(Saying.of("report-cannot-be-had", ""), last.section())
        : last.shown(figure);
  }

  /** The TIR of the station farthest from the nut, as far out as it was read. */
  private static Figure readTir(Runout runout) {
    Runout.Station farthest = runout.stations().get(0);
    for (Runout.Station station : runout.stations()) {
      if (distance(station) > distance(farthest)) {
        farthest = station;
      }
    }
    return farthest.tir();
  }

  private static double distance(Runout.Station station) {
    return station.sweep().station().orElse(Double.NEGATIVE_INFINITY);
  }

  private static Function<Reduced, Optional<Figure>> runout(Function<Runout, Figure> of) {
    return r -> r instanceof Runout runout ? Optional.of(of.apply(runout)) : Optional.empty();
  }

  private static Function<Reduced, Optional<Figure>> sideLoad(Function<SideLoad, Figure> of) {
    return r -> r instanceof SideLoad load ? Optional.of(of.apply(load)) : Optional.empty();
  }

  private static Function<Reduced, Optional<Figure>> axial(Function<Axial, Figure> of) {
    return r -> r instanceof Axial axial ? Optional.of(of.apply(axial)) : Optional.empty();
  }

  private static Function<Reduced, Optional<Figure>> speed(Function<Speed, Figure> of) {
    return r -> r instanceof Speed speed ? Optional.of(of.apply(speed)) : Optional.empty();
  }
}
