package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.Isotonic;
import rundlauf.maths.Samples;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.sideload.Shares.Bound;
import rundlauf.reduce.sideload.Shares.Share;

/**
 * Differences of neighbours' travels. No joint gives way against its load, so travels fall from the
 * load to the foot: a limit of one body limits the others too.
 *
 * @param row from the shank where it is pushed to the foot, both known
 * @param values the travels to show [m/N]: falling from the whole to 0, so that shares add up
 * @param bending the shank's own [m/N], where it stands apart
 */
record JointShares(List<Travel> row, Samples values, Optional<Measured> bending, Draws draws) {
  /**
   * As good as without limit [m/N]: what a compliance cannot be over is the whole, not a number.
   */
  private static final double NO_LIMIT = Double.MAX_VALUE;

  /** The shank's bending is better known than travels are: they give way to it; our choice. */
  private static final double SURE = 1e9;

  static JointShares of(List<Travel> row, Optional<Measured> bending, Draws draws) {
    return new JointShares(row, falling(row), bending, draws);
  }

  /** Known travels made to fall, limits moved between their known neighbours. */
  private static Samples falling(List<Travel> row) {
    double whole = Math.max(0, row.get(0).at().value());
    List<Travel> known = row.stream().filter(travel -> travel.kind() == Travel.Kind.KNOWN).toList();
    int last = known.size() - 1;
    Samples rising =
        Samples.generate(known.size(), k -> within(0, whole, known.get(last - k).at().value()));
    Samples weights =
        Samples.generate(known.size(), k -> known.get(last - k).position() <= 1 ? SURE : 1);
    Samples fitted = Isotonic.fit(rising, weights);
    double[] values = new double[row.size()];
    int passed = 0;
    for (int i = 0; i < values.length; i++) {
      if (row.get(i).kind() == Travel.Kind.KNOWN) {
        values[i] = fitted.get(last - passed);
        passed++;
      } else {
        double behind = fitted.get(last - passed);
        values[i] = within(behind, fitted.get(last - passed + 1), row.get(i).at().value());
      }
    }
    return Samples.of(values);
  }

  private static double within(double low, double high, double value) {
    return Math.max(low, Math.min(high, value));
  }

  List<Share> shares() {
    List<Share> all = new ArrayList<>();
    for (int i = 0; i + 1 < row.size(); i++) {
      all.add(share(i));
    }
    return all;
  }

  private Share share(int i) {
    Travel front = row.get(i);
    Travel behind = row.get(i + 1);
    boolean exact = front.kind() == Travel.Kind.KNOWN && behind.kind() == Travel.Kind.KNOWN;
    boolean least = front.below() && behind.above();
    Optional<Lag> low = least ? Optional.of(new Lag(front.at(), behind.at())) : Optional.empty();
    int top = above(i);
    int bottom = below(i + 1);
    var high = new Lag(row.get(top).at(), row.get(bottom).at());
    double value = least ? values.get(i) - values.get(i + 1) : values.get(top) - values.get(bottom);
    Optional<Bound> bound =
        exact ? Optional.empty() : Optional.of(least ? Bound.AT_LEAST : Bound.AT_MOST);
    return new Share(
        Row.joints(front.position(), behind.position()),
        i == 0 && bending.isPresent() ? bending.get() : compliance(low, high, value),
        share(low, high, value),
        bound);
  }

  private Figure compliance(Optional<Lag> low, Lag high, double value) {
    return Lag.known(
        low.map(lag -> lag.compliance(draws)), high.compliance(draws), NO_LIMIT, value, draws);
  }

  private Figure share(Optional<Lag> low, Lag high, double value) {
    Figure whole = row.get(0).at();
    if (whole.estimate().orElseThrow().interval().low() <= 0) {
      return new Missing(Unit.ONE, Saying.of("shares-whole-lost", "shares"));
    }
    return Lag.known(
        low.map(lag -> lag.share(whole, draws)),
        high.share(whole, draws),
        1,
        value / values.get(0),
        draws);
  }

  /** The nearest at or in front of {@code i} that limits the travel there from above. */
  private int above(int i) {
    int at = i;
    while (!row.get(at).above()) {
      at--;
    }
    return at;
  }

  /** The nearest at or behind {@code i} that limits the travel there from below. */
  private int below(int i) {
    int at = i;
    while (!row.get(at).below()) {
      at++;
    }
    return at;
  }
}
