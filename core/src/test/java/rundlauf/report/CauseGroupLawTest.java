package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

class CauseGroupLawTest {
  private static final String FILE = "heron.yaml";

  private static final Measured FIGURE =
      Measured.exact(1e-4, Unit.MICROMETRE)
          .with(Cause.rectangular("indicator/plunger dial", "limit-of-error"), 4e-6)
          .with(Cause.normal(FILE + "/sweep 1", "scatter-along"), 2e-6)
          .with(Cause.normal(FILE + "/sweep 2", "scatter-along"), -2e-6)
          .with(Cause.normal(FILE + "/sweep 2", "scatter-across"), 1e-6)
          .with(Cause.rectangular("rig/brass lever", "load-arm"), 2.5e-6)
          .with(Cause.normal(FILE, "tip-height"), 1e-7);

  // source: JCGM 100:2008, 5.1.2: independent causes combine in quadrature
  @Test
  void theGroupsCombineToTheWhole() {
    List<CauseGroup> groups = CauseGroup.of(FIGURE, FILE);
    double squares = groups.stream().mapToDouble(g -> g.u() * g.u()).sum();
    assertThat(Math.sqrt(squares)).isCloseTo(FIGURE.u(), within(1e-15));
    assertThat(groups.stream().mapToDouble(CauseGroup::share).sum()).isCloseTo(1, within(1e-12));
  }

  @Test
  void causesOfOneKindAreOneAndTheLargestComesFirst() {
    List<CauseGroup> groups = CauseGroup.of(FIGURE, FILE);
    assertThat(groups)
        .extracting(CauseGroup::name)
        .containsExactly(
            of("limit-of-error", "plunger dial"),
            Saying.of("report-cause", "", Arg.term("scatter-along")),
            of("load-arm", "brass lever"),
            Saying.of("report-cause-rest", ""));
    // source: recomputed: √(2² + 2² + 1²) = 3 µm
    assertThat(groups.get(1).u()).isCloseTo(3e-6, within(1e-15));
  }

  private static Saying of(String part, String owner) {
    return Saying.of("report-cause-of", "", Arg.term(part), Arg.of(owner));
  }

  @Test
  void anExactFigureHasNoCauses() {
    assertThat(CauseGroup.of(Measured.exact(1, Unit.RPM), FILE)).isEmpty();
  }
}
