package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.Invented;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.sideload.SideLoad;

/** How results end, and which of two endings counts. */
class ExitTest {
  @ParameterizedTest
  @CsvSource({
    "DONE, LOOK, LOOK",
    "LOOK, REFUSED, REFUSED",
    "REFUSED, FAULT, FAULT",
    "FAULT, LOOK, FAULT",
    "REFUSED, DONE, REFUSED",
    "DONE, DONE, DONE"
  })
  void oneOverThreeOverFourOverNothing(Exit a, Exit b, Exit both) {
    assertThat(a.and(b)).isEqualTo(both);
    assertThat(b.and(a)).isEqualTo(both);
  }

  @Test
  void statusesAreTheContracts() {
    assertThat(List.of(Exit.values()).stream().map(Exit::status)).containsExactly(0, 1, 2, 3, 4);
  }

  @Test
  void adviceAloneIsDone() {
    assertThat(Invented.runout().advice()).isNotEmpty();
    assertThat(Exit.of(Invented.runout())).isEqualTo(Exit.DONE);
  }

  @Test
  void aCautionOrAHoldMustBeLookedAt() {
    assertThat(Exit.of(Invented.sideLoad())).isEqualTo(Exit.LOOK);
    assertThat(Invented.inspection().cautions()).isEmpty();
    assertThat(Exit.of(Invented.inspection())).isEqualTo(Exit.LOOK);
    var cautioned = Invented.speed().withCautions(List.of(Saying.of("speed-falls", "curve")));
    assertThat(Exit.of(Invented.speed())).isEqualTo(Exit.DONE);
    assertThat(Exit.of(cautioned)).isEqualTo(Exit.LOOK);
  }

  @Test
  void withoutItsMainFigureATrialIsRefused() {
    SideLoad load = Invented.sideLoad();
    var without =
        new SideLoad(
            load.head(),
            load.readings(),
            Invented.missing(Unit.NEWTON_PER_MICROMETRE, "too-stiff"),
            load.compliance(),
            load.play(),
            load.hysteresis(),
            load.straightness(),
            load.shankCompliance(),
            load.setupStiffness(),
            load.lines(),
            load.cautions(),
            load.advice());
    assertThat(Exit.of(without)).isEqualTo(Exit.REFUSED);
  }
}
