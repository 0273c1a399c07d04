package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.JobPlan;
import rundlauf.planning.MadeJob;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.safety.Standing;

class JobsSectionTest {
  private final MadeJob made =
      new MadeJob()
          .setup("fit", 5e6, 3e-6, Standing.INSPECTED)
          .setup("unseen", 8e6, 2e-6, Standing.NOT_INSPECTED)
          .setup("soft", 0.15e6, 40e-6, Standing.INSPECTED)
          .setup("held", 20e6, 1e-6, Standing.HELD)
          .with("tolerance", "0.05 mm");

  private Section section(JobOutcome... jobs) {
    return JobsSection.section(made.bench(), List.of(jobs)).orElseThrow();
  }

  private static List<String> codes(Section section) {
    List<String> codes = new ArrayList<>();
    section.blocks().forEach(block -> cells(block).forEach(cell -> said(cell, codes)));
    return codes;
  }

  private static Stream<Cell> cells(Block block) {
    if (block instanceof Remarks remarks) {
      return remarks.remarks().stream().flatMap(r -> r.cells().stream());
    }
    Table table = block instanceof Chart chart ? chart.twin() : (Table) block;
    return table.rows().stream().flatMap(row -> row.cells().stream());
  }

  private static void said(Cell cell, List<String> codes) {
    if (cell instanceof Cell.Said one) {
      codes.add(one.saying().code());
    } else if (cell instanceof Cell.SaidAll all) {
      all.sayings().forEach(saying -> codes.add(saying.code()));
    } else if (cell instanceof Cell.Link link) {
      codes.add(link.saying().code());
    }
  }

  @Test
  void thereIsNoneWhereNothingWasPlanned() {
    assertThat(JobsSection.section(made.bench(), List.of())).isEmpty();
  }

  @Test
  void everyJobHasItsRankingAndEverySetupItsCut() {
    Section jobs = section(new JobOutcome.Planned(made.plan()));
    assertThat(codes(jobs)).containsExactly("report-jobs-intro", "chatter-not-examined");
    Section job = jobs.parts().get(0);
    assertThat(job.id()).isEqualTo("job-1");
    assertThat(codes(job))
        .contains(
            "report-job-feature-slot",
            "report-job-depth",
            "report-job-tolerance",
            "report-job-recommended",
            "report-job-not-inspected",
            "report-job-will-not-do",
            "report-job-held")
        .doesNotContain("report-none-will-do", "chatter-not-examined");
    // a held spindle is given no cut
    assertThat(job.parts())
        .extracting(Section::id)
        .containsExactly("job-1-1", "job-1-2", "job-1-3");
    Section best = job.parts().get(0);
    assertThat(codes(best))
        .contains("report-cut", "report-limit-holds", "term.limit-wall-error", "report-tooth")
        .doesNotContain("report-nearest-miss", "report-limit-fails");
    assertThat(best.blocks()).anyMatch(block -> block instanceof Chart.Forces);
    assertThat(best.blocks()).anyMatch(block -> block instanceof Chart.Chips);
  }

  @Test
  void aMissIsSaidToBeOneAndWhatFailsIsMarked() {
    JobPlan plan =
        new MadeJob()
            .setup("soft", 0.15e6, 40e-6, Standing.INSPECTED)
            .with("tolerance", "0.01 mm")
            .plan();
    Section job = section(new JobOutcome.Planned(plan)).parts().get(0);
    assertThat(codes(job)).contains("report-none-will-do", "nearest-miss");
    assertThat(codes(job.parts().get(0))).contains("report-nearest-miss", "report-limit-fails");
  }

  @Test
  void aRefusedJobStandsThereWithItsRefusal() {
    Refused refused = Refused.at(Place.NOWHERE, "job-without-depth");
    Section job = section(new JobOutcome.Unplannable(made.plan().job(), refused)).parts().get(0);
    assertThat(codes(job))
        .containsExactly("report-job-refused", "job-without-depth", "job-without-depth.remedy");
  }

  @Test
  void oddsNearTheEndsAreNotMadeFinerThanTheDraws() {
    assertThat(RankingTable.odds(0.999)).isEqualTo(Saying.of("report-job-odds-over", ""));
    assertThat(RankingTable.odds(0.004)).isEqualTo(Saying.of("report-job-odds-under", ""));
    assertThat(RankingTable.odds(0.94).code()).isEqualTo("report-job-odds");
  }

  @Test
  void theChartAndItsTableHaveTheSameForces() {
    Section cut = section(new JobOutcome.Planned(made.plan())).parts().get(0).parts().get(0);
    Chart.Forces forces =
        cut.blocks().stream()
            .filter(Chart.Forces.class::isInstance)
            .map(Chart.Forces.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(forces.angles().size()).isEqualTo(72);
    for (int i = 0; i < 72; i++) {
      var cells = forces.twin().rows().get(i).cells();
      assertThat(cells).hasSize(1 + forces.rows().size());
      assertThat(((Cell.Number) cells.get(1)).si()).isEqualTo(forces.rows().get(0).forces().get(i));
    }
  }
}
