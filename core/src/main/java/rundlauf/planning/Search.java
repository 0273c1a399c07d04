package rundlauf.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.cutting.prediction.CutTask;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Predicting;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.cutting.prediction.Tried;
import rundlauf.cutting.prediction.Trying;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;

/** The quickest cut of a grid that keeps every limit, all tried with the same draws. */
final class Search {
  /** Cuts that a nearest miss is chosen from by all draws; our choice. */
  private static final int SHORTLIST = 6;

  /** Probabilities closer than this are the same to a hundred draws or so; our choice. */
  private static final double SAME_ODDS = 0.03;

  /** Over its limit by so much of it on the draws that fail most, a cut is hopeless; our choice. */
  private static final double HOPELESS = 1;

  private static final Tried NOT_TRIED = new Tried(0, 0, Map.of());

  private final Grid grid;
  private final List<GridCut> quickestFirst;
  private final CutTask first;
  private final Trying trying;
  private final Draws draws;
  private final int states;
  private final Map<GridCut, Tried> tried = new LinkedHashMap<>();
  private final Map<GridCut, Double> through = new LinkedHashMap<>();

  private Search(Grid grid, CutTask task, Draws draws, int states) {
    this.grid = grid;
    this.quickestFirst = grid.quickestFirst();
    this.first = task.with(quickestFirst.get(0).cut());
    this.trying = Trying.of(first, draws, states);
    this.draws = draws;
    this.states = states;
  }

  /**
   * What was found.
   *
   * @param keeps whether the cut keeps every judged limit; else it is the nearest miss
   * @param boundBy of a cut that keeps all what fails in a heavier one; of a miss what fails
   */
  record Found(GridCut cut, Prediction prediction, boolean keeps, Optional<Limit> boundBy) {}

  /**
   * Searches a grid.
   *
   * @param task with any cut
   * @param states joint draws that every cut is tried with
   */
  static Found in(Grid grid, CutTask task, Draws draws, int states, Work work) {
    Search search = new Search(grid, task, draws, states);
    return search.quickest(work).orElseGet(search::nearest);
  }

  private Optional<Found> quickest(Work work) {
    for (GridCut cut : quickestFirst) {
      work.check();
      if (result(cut).passes()) {
        Prediction prediction = predict(cut);
        if (prediction.probability() >= Limit.ASKED) {
          return Optional.of(new Found(cut, prediction, true, boundBy(cut, prediction)));
        }
      }
    }
    return Optional.empty();
  }

  /** How a cut fares; one that is deeper or wider than a hopeless one is not tried. */
  private Tried result(GridCut cut) {
    Tried known = tried.get(cut);
    if (known == null) {
      known =
          grid.lighter(cut).stream().anyMatch(this::hopeless) ? NOT_TRIED : trying.tried(cut.cut());
      tried.put(cut, known);
    }
    return known;
  }

  /** Whether a cut is so far past a limit that a heavier one of its kind will not come back. */
  private boolean hopeless(GridCut cut) {
    Tried result = result(cut);
    return result == NOT_TRIED || (!result.passes() && trying.excess(cut.cut()) > HOPELESS);
  }

  private Prediction predict(GridCut cut) {
    return Predicting.predict(first.with(cut.cut()), draws, states);
  }

  /**
   * Of the cuts one step heavier, the limit that fails most often in the one that would gain the
   * most; where none of them fails, the limit that is kept with the least probability.
   */
  private Optional<Limit> boundBy(GridCut cut, Prediction prediction) {
    return grid.heavier(cut).stream()
        .sorted(Comparator.comparingDouble(GridCut::seconds))
        .map(heavier -> trying.tried(heavier.cut()))
        .filter(result -> !result.passes())
        .findFirst()
        .flatMap(Search::mostFailed)
        .flatMap(code -> limit(code, prediction))
        .or(() -> leastLikely(prediction));
  }

  private static Optional<String> mostFailed(Tried result) {
    return result.failures().entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey);
  }

  private static Optional<Limit> limit(String code, Prediction prediction) {
    return prediction.limits().stream().filter(limit -> limit.code().equals(code)).findFirst();
  }

  private static Optional<Limit> leastLikely(Prediction prediction) {
    return prediction.limits().stream()
        .filter(Limit::judged)
        .min(Comparator.comparingDouble(limit -> limit.probability().orElseThrow()));
  }

  /**
   * The cut that keeps all limits on the most draws, out of those that were looked at longest
   * before they were given up, of these the ones least over their limits; of cuts that the draws
   * cannot tell apart the quickest.
   */
  private Found nearest() {
    List<GridCut> longest = new ArrayList<>(quickestFirst);
    longest.sort(Comparator.comparingInt(cut -> -result(cut).states()));
    int least = result(longest.get(Math.min(SHORTLIST, longest.size()) - 1)).states();
    longest.removeIf(cut -> result(cut).states() < least);
    Map<GridCut, Double> excess = new LinkedHashMap<>();
    longest.forEach(cut -> excess.put(cut, trying.excess(cut.cut())));
    List<GridCut> shortlist =
        longest.stream()
            .sorted(
                Comparator.<GridCut>comparingInt(cut -> -result(cut).states())
                    .thenComparing(excess::get))
            .limit(SHORTLIST)
            .flatMap(cut -> quickestFirst.stream().filter(cut::isButForSpeed))
            .toList();
    double best = shortlist.stream().mapToDouble(this::probability).max().orElseThrow();
    GridCut nearest =
        shortlist.stream()
            .filter(cut -> probability(cut) >= best - SAME_ODDS)
            .min(Comparator.comparingDouble(GridCut::seconds))
            .orElseThrow();
    Prediction prediction = predict(nearest);
    return new Found(nearest, prediction, false, leastLikely(prediction));
  }

  private double probability(GridCut cut) {
    return through.computeIfAbsent(cut, c -> trying.triedThrough(c.cut()).probability());
  }
}
