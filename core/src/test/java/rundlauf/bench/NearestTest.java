package rundlauf.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
  @Test
  void distancesOfTheTextbook() {
    // source: from memory: the textbook example of Levenshtein's distance, kitten to sitting: 3
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(Nearest.distance("", "abc")).isEqualTo(3);
    assertThat(Nearest.distance("abc", "")).isEqualTo(3);
    assertThat(Nearest.distance("abc", "abc")).isZero();
  }

  @Test
  void nearestFirstOthersInTheirOrder() {
    assertThat(Nearest.first("Redings", List.of("title", "readings", "date")))
        .startsWith("readings");
    assertThat(Nearest.first("tilte", List.of("date", "readings", "title")))
        .containsExactly("title", "date", "readings");
    assertThat(Nearest.first("xx", List.of("ab", "cd"))).containsExactly("ab", "cd");
  }

  @Test
  void aLongNameIsComparedByItsHead() {
    assertThat(Nearest.first("a".repeat(1_000_000), List.of("b", "aaa"))).startsWith("aaa");
  }
}
