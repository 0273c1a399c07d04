package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.readings.RunoutReader;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.runout.RunoutReduction;

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
}
