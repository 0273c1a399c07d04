package rundlauf.reduce.axial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.reduce.axial.WrittenAxials.FINE;
import static rundlauf.reduce.axial.WrittenAxials.bothWays;
import static rundlauf.reduce.axial.WrittenAxials.codes;
import static rundlauf.reduce.axial.WrittenAxials.point;
import static rundlauf.reduce.axial.WrittenAxials.readings;
import static rundlauf.reduce.axial.WrittenAxials.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;

class AxialReductionCaseTest {
  @Test
  void fineReadingsGiveBackWhatWasPutIn() {
    Axial found = reduce(FINE, bothWays(0.5e-6, 30e-6, 4e-6, 0));
    // source: recomputed: r = 0.5 µm/N · F ± 15 µm of play ± 2 µm of loop, to a fine dial's step
    assertThat(found.endPlay().value()).isCloseTo(30e-6, within(1e-8));
    assertThat(found.axialStiffness().value()).isCloseTo(2e6, within(2000.0));
    assertThat(found.compliance().value()).isCloseTo(0.5e-6, within(1e-9));
    assertThat(found.hysteresis().value()).isCloseTo(4e-6, within(1e-8));
    assertThat(found.cautions()).isEmpty();
    assertThat(found.lines()).hasSize(2);
    assertThat(found.lines().get(1).direction()).isEqualTo(Math.PI);
    assertThat(found.lines().get(1).intercept()).isCloseTo(15e-6, within(1e-8));
  }

  @Test
  void theWeightThatHangsOnTheBearingsFallsOut() {
    // source: recomputed: a weight W moves both lines by −C·W where every push is larger than it
    Axial found = reduce(FINE, bothWays(0.5e-6, 30e-6, 0, 4));
    assertThat(found.endPlay().value()).isCloseTo(30e-6, within(1e-8));
    assertThat(found.axialStiffness().value()).isCloseTo(2e6, within(2000.0));
  }

  @Test
  void pushedOneWayThePlayIsALowerBound() {
    List<Point> pushes =
        bothWays(0.5e-6, 30e-6, 4e-6, 0).stream()
            .filter(p -> p.direction() == 0)
            .collect(Collectors.toList());
    Axial found = reduce(FINE, pushes);
    // source: recomputed: intercept 15 µm less the unloaded reading at a fifth of the play
    assertThat(found.endPlay().value()).isCloseTo(9e-6, within(1e-7));
    assertThat(found.cautions())
        .containsExactly(Saying.of("side-load-play-lower-bound", "endPlay"));
    pushes.removeIf(p -> p.load() == 0);
    assertThat(((Missing) reduce(FINE, pushes).endPlay()).why())
        .isEqualTo(Saying.of("side-load-play-one-sided", "endPlay"));
  }

  @Test
  void oneLoadIsASecantAndSaysSo() {
    Axial found =
        reduce(
            FINE,
            List.of(
                point(0, 0, 0, Branch.UNSAID),
                point(20, 10e-6, 0, Branch.UNSAID),
                point(0, 0, 0, Branch.UNSAID)));
    // source: recomputed: 20 N over 10 µm
    assertThat(found.axialStiffness().value()).isCloseTo(2e6, within(5000.0));
    assertThat(found.cautions()).containsExactly(Saying.of("side-load-secant", "axialStiffness"));
    assertThat(((Missing) found.endPlay()).why().code()).isEqualTo("side-load-play-needs-loads");
  }

  @Test
  void readingsThatRunAgainstTheLoadAreRefused() {
    List<Point> backward = new ArrayList<>();
    bothWays(0.5e-6, 30e-6, 4e-6, 0)
        .forEach(p -> backward.add(point(p.load(), -p.reading(), p.direction(), p.branch())));
    assertThatThrownBy(() -> reduce(FINE, backward))
        .isInstanceOfSatisfying(
            Refused.class, r -> assertThat(r.saying().code()).isEqualTo("axial-dial-backward"));
  }

  @Test
  void whatWasTakenForGrantedIsSaid() {
    assertThat(codes(reduce(FINE, bothWays(0.5e-6, 30e-6, 4e-6, 0)).advice()))
        .containsExactly(
            "side-load-force-exact", "side-load-dial-limit-unknown", "stand-not-checked");
    assertThat(readings(FINE, List.of()).body()).isEmpty();
  }
}
