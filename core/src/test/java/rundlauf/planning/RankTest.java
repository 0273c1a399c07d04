package rundlauf.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RankTest {
  private static Map<String, Double> seconds(double heron, double wren, double dunlin) {
    Map<String, Double> all = new LinkedHashMap<>();
    all.put("Heron", heron);
    all.put("Wren", wren);
    all.put("Dunlin", dunlin);
    return all;
  }

  @Test
  void timesFarApartAreRanked() {
    Map<String, Double> all = seconds(20, 30, 45);
    assertThat(Rank.of("Heron", all)).isEqualTo(new Rank(1, List.of()));
    assertThat(Rank.of("Wren", all)).isEqualTo(new Rank(2, List.of()));
    assertThat(Rank.of("Dunlin", all)).isEqualTo(new Rank(3, List.of()));
  }

  @Test
  void theMiddleOneMayBeLikeBothThoughTheyAreToldApart() {
    Map<String, Double> all = seconds(20, 24, 29);
    assertThat(Rank.of("Heron", all)).isEqualTo(new Rank(1, List.of("Wren")));
    assertThat(Rank.of("Wren", all)).isEqualTo(new Rank(1, List.of("Heron", "Dunlin")));
    assertThat(Rank.of("Dunlin", all)).isEqualTo(new Rank(2, List.of("Wren")));
  }

  @Test
  void aQuarterIsToldApart() {
    Map<String, Double> all = seconds(20, 25, 25);
    assertThat(Rank.of("Heron", all)).isEqualTo(new Rank(1, List.of()));
    assertThat(Rank.of("Dunlin", all)).isEqualTo(new Rank(2, List.of("Wren")));
  }

  @Test
  void anotherUnitOfTimeChangesNoRank() {
    for (String name : List.of("Heron", "Wren", "Dunlin")) {
      assertThat(Rank.of(name, seconds(1200, 1440, 1740)))
          .isEqualTo(Rank.of(name, seconds(20, 24, 29)));
    }
  }

  @Test
  void oddsAreToldApartByTheDrawsTheyAreOf() {
    // source: recomputed: 2 √(2 · 0.25/128) = 0.125
    assertThat(Rank.ODDS_TOLD).isEqualTo(12);
  }
}
