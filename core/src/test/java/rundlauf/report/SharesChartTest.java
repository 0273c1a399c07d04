package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Samples;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.sideload.Shares;
import rundlauf.reduce.sideload.Shares.Bound;

class SharesChartTest {
  /** Draws even over 0.1 about the share: 95 % of them within 0.0475. */
  private static Shares.Share share(String joint, double share, Optional<Bound> bound) {
    Drawn drawn =
        Drawn.of(Unit.ONE, Samples.generate(1001, i -> share + (i - 500) / 1000.0 * 0.1), Map.of());
    return new Shares.Share(joint, drawn, drawn, bound);
  }

  private static ShareBars bars(Shares.Share... shares) {
    return (ShareBars)
        SharesChart.of(TrialSheet.turning("cw"), new Shares(List.of(shares), List.of()))
            .orElseThrow();
  }

  // source: by hand: 95 % of an even spread 0.1 wide reaches 0.0475 to both sides
  @Test
  void aBarIsTheShareWithItsInterval() {
    ShareBars bars =
        bars(share("shank", 0.2, Optional.empty()), share("mount", 0.8, Optional.empty()));
    assertThat(bars.bars().get(1).share()).isCloseTo(0.8, within(1e-3));
    assertThat(bars.bars().get(1).low()).isCloseTo(0.7525, within(1e-3));
    assertThat(bars.bars().get(1).high()).isCloseTo(0.8475, within(1e-3));
    assertThat(bars.whole()).isTrue();
    assertThat(bars.summary().code()).isEqualTo("report-shares-summary");
    assertThat(bars.twin().rows().get(1).cells().get(2))
        .isEqualTo(new Cell.Number(bars.bars().get(1).share(), bars.share()));
  }

  @Test
  void aLimitIsSaidToBeOne() {
    ShareBars bars =
        bars(
            share("shank", 0.2, Optional.empty()),
            share("bearings", 0.3, Optional.of(Bound.AT_LEAST)),
            share("mount", 0.5, Optional.of(Bound.AT_MOST)));
    assertThat(bars.whole()).isFalse();
    assertThat(bars.summary().code()).isEqualTo("report-shares-bounded-summary");
    assertThat(bars.twin().rows().stream().map(r -> r.cells().get(1)))
        .containsExactly(
            new Cell.Blank(),
            new Cell.Said(Saying.of("bound-at-least", "")),
            new Cell.Said(Saying.of("bound-at-most", "")));
  }

  @Test
  void nothingIsDrawnOfSharesThatAreNotKnown() {
    var lost = new Missing(Unit.ONE, Saying.of("shares-whole-lost", "shares"));
    var shares =
        new Shares(List.of(new Shares.Share("shank", lost, lost, Optional.empty())), List.of());
    assertThat(SharesChart.of(TrialSheet.turning("cw"), shares)).isEmpty();
  }
}
