package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StreamLawTest {
  private static final Draws DRAWS = new Draws(7, 40_000);

  @Test
  void sameIdGivesTheSameDraws() {
    assertThat(DRAWS.stream("dial").gaussians(100)).isEqualTo(DRAWS.stream("dial").gaussians(100));
    assertThat(DRAWS.stream("dial").students(100, 3))
        .isEqualTo(DRAWS.stream("dial").students(100, 3));
  }

  @Test
  void anotherSeedOrAnotherIdGivesOthers() {
    Samples first = DRAWS.stream("dial").gaussians(100);
    assertThat(DRAWS.stream("dials").gaussians(100)).isNotEqualTo(first);
    assertThat(DRAWS.stream("laid").gaussians(100)).isNotEqualTo(first);
    assertThat(new Draws(8, 40_000).stream("dial").gaussians(100)).isNotEqualTo(first);
  }

  @Test
  void whoDrewBeforeDoesNotMatter() {
    Samples alone = DRAWS.stream("b").gaussians(50);
    Stream a = DRAWS.stream("a");
    Stream b = DRAWS.stream("b");
    List<Double> mixed = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      a.uniform();
      mixed.add(b.gaussian());
      a.gaussian();
    }
    assertThat(Samples.of(mixed)).isEqualTo(alone);
  }

  @Test
  void idsThatDifferByOneLetterAreIndependent() {
    List<Samples> columns = new ArrayList<>();
    for (String id : List.of("t/1", "t/2", "t/3", "u/1", "t/11", "t1/")) {
      columns.add(DRAWS.stream(id).gaussians(DRAWS.count()));
    }
    // 4 standard errors of a correlation of 40000 pairs; the seed is fixed
    double limit = 4 / Math.sqrt(DRAWS.count());
    for (int i = 0; i < columns.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(correlation(columns.get(i), columns.get(j))).isCloseTo(0, within(limit));
      }
    }
  }

  @Test
  void shapesHaveTheirMoments() {
    Samples normal = DRAWS.stream("n").gaussians(DRAWS.count());
    Samples flat = DRAWS.stream("r").rectangulars(DRAWS.count());
    assertThat(normal.mean()).isCloseTo(0, within(0.02));
    assertThat(normal.standardDeviation()).isCloseTo(1, within(0.015));
    assertThat(flat.mean()).isCloseTo(0, within(0.02));
    assertThat(flat.standardDeviation()).isCloseTo(1, within(0.015));
    // source: JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has u = a/√3
    assertThat(flat.max()).isCloseTo(Math.sqrt(3), within(0.001));
    assertThat(flat.min()).isCloseTo(-Math.sqrt(3), within(0.001));
  }

  @Test
  void studentDrawsReachAsFarAsTheTableSays() {
    Samples t = DRAWS.stream("t").students(DRAWS.count(), 4);
    long outside = t.stream().filter(x -> Math.abs(x) > 2.776).count();
    // source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2: t of 4 dof, 0.975
    assertThat(outside / (double) DRAWS.count()).isCloseTo(0.05, within(0.005));
  }

  private static double correlation(Samples a, Samples b) {
    double meanA = a.mean();
    double meanB = b.mean();
    double sum = 0;
    for (int i = 0; i < a.size(); i++) {
      sum += (a.get(i) - meanA) * (b.get(i) - meanB);
    }
    return sum / (a.size() - 1) / (a.standardDeviation() * b.standardDeviation());
  }
}
