package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.readings.LoadReader;
import rundlauf.readings.RunoutReader;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.runout.RunoutReduction;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.sideload.SideLoadReduction;

/** What a trial tells while it is taken; invented readings. */
class LivePartTest {
  @Test
  void ofARunoutItTellsTheStationThatWasReadLast() {
    Trial trial =
        trial(
            fields("trial", "runout", "indicator", fields("division", "0.01 mm")),
            "station_mm, angle_deg, reading_div",
            "20, 0, 0",
            "20, 90, 4",
            "20, 180, 8",
            "20, 270, 4",
            "5, 0, 0",
            "5, 90, 1",
            "5, 180, 2",
            "5, 270, 1");
    Runout runout =
        RunoutReduction.reduce(
            RunoutReader.read(trial, Optional.empty()), Draws.DEFAULT, Work.sequential());
    assertThat(runout.last().sweep().station()).hasValue(0.005);
    var outcome = new Outcome.Figures(trial, runout);
    Table told = (Table) LivePart.of(outcome, Optional.empty(), Optional.empty()).blocks().get(0);
    assertThat(((Cell.Shown) told.rows().get(0).cells().get(1)).figure())
        .isSameAs(runout.stations().get(1).tir());
  }

  @Test
  void ofASideLoadItDrawsTheJointsOnceTheDialWasMoved() {
    String[] shank = {"shank, 10, 0, 0", "shank, 10, 5, 2", "shank, 10, 10, 4"};
    String[] nut = {"nut, -1, 0, 0", "nut, -1, 5, 1", "nut, -1, 10, 2"};
    assertThat(charts(shank)).noneMatch(ShareBars.class::isInstance);
    String[] both = Stream.of(shank, nut).flatMap(Stream::of).toArray(String[]::new);
    assertThat(charts(both)).hasSize(2).anyMatch(ShareBars.class::isInstance);
  }

  private static List<Block> charts(String... rows) {
    Entry dial = fields("division", "0.01 mm");
    String[] table =
        Stream.concat(Stream.of("place, at_mm, load_N, reading_div"), Stream.of(rows))
            .toArray(String[]::new);
    Trial trial = trial(fields("trial", "side-load", "contact", "10 mm", "indicator", dial), table);
    SideLoad load =
        SideLoadReduction.reduce(
            LoadReader.read(trial, Optional.empty()), Draws.DEFAULT, Work.sequential());
    var outcome = new Outcome.Figures(trial, load);
    return LivePart.of(outcome, Optional.empty(), Optional.empty()).blocks().stream()
        .filter(Chart.class::isInstance)
        .toList();
  }
}
