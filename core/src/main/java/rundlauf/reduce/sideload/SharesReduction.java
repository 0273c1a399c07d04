package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.push.LoadLines;
import rundlauf.reduce.sideload.Shares.Share;

/** The lines of several bodies in, the shares of the joints between them out. */
final class SharesReduction {
  private static final String ABOUT = "shares";

  private final LoadReadings readings;
  private final Draws draws;
  private final Map<String, List<Slope>> bodies = new LinkedHashMap<>();
  private final List<Saying> sayings = new ArrayList<>();

  private SharesReduction(LoadReadings readings, Draws draws) {
    this.readings = readings;
    this.draws = draws;
  }

  /**
   * Shares of the joints in the travel at the load.
   *
   * @param lines of all places of the trial; those along the first push are used
   * @return compliances [m/N] and shares [1] from the load to the foot, draw by draw, so that what
   *     all lines share, the force's scale and the plunger's angle, cancels from the shares; none,
   *     and why, where the trial cannot bear them
   * @see "docs/methods/side-load.md"
   */
  static Shares of(LoadReadings readings, List<Slope> lines, Draws draws) {
    return new SharesReduction(readings, draws).shares(lines);
  }

  private Shares shares(List<Slope> all) {
    List<Slope> lines = all.stream().filter(line -> line.load().isEmpty()).toList();
    List<String> touched =
        readings.points().stream().map(p -> Row.body(p.place())).distinct().toList();
    Optional<Saying> why = all.isEmpty() ? Optional.of(alone(touched)) : unfit(touched);
    if (why.isPresent()) {
      return Shares.none(List.of(why.get()));
    }
    int foot = Row.foot(reference());
    touched.forEach(body -> sort(body, lines, all.get(0), foot));
    if (bodies.size() < 2) {
      return alone();
    }
    List<Travel> row = row(foot);
    if (row.get(0).position() != 0) {
      sayings.add(0, Saying.of("shares-no-whole", ABOUT, contact()));
      return Shares.none(sayings);
    }
    List<Share> shares = JointShares.of(row, carrying().bending(), draws).shares();
    sayings.addAll(0, SharesAdvice.of(row, shares));
    if (readings.reference().isEmpty()) {
      sayings.add(Saying.of("shares-foot-assumed", ABOUT));
    }
    return new Shares(shares, sayings);
  }

  private Optional<Saying> unfit(List<String> touched) {
    if (touched.size() < 2) {
      return Optional.of(alone(touched));
    }
    if (readings.contact().isEmpty()) {
      return Optional.of(Saying.of("side-load-no-contact", ABOUT));
    }
    return Optional.empty();
  }

  /** Where the foot stood; on the table where the trial does not say. */
  private String reference() {
    return readings.reference().orElse("table");
  }

  private static Saying alone(List<String> touched) {
    return Saying.of("shares-one-body", ABOUT, Arg.of(touched.get(0)));
  }

  private Shares alone() {
    String body = bodies.isEmpty() ? Row.SHANK : bodies.keySet().iterator().next();
    sayings.add(0, Saying.of("shares-one-body", ABOUT, Arg.of(body)));
    return Shares.none(sayings);
  }

  private Arg contact() {
    return Arg.of(readings.contact().orElseThrow().si(), Unit.MILLIMETRE);
  }

  /** Keeps a body's lines where they can be used, or says why they cannot. */
  private void sort(String body, List<Slope> lines, Slope first, int foot) {
    List<Slope> own = lines.stream().filter(l -> Row.body(l.place()).equals(body)).toList();
    List<Slope> along = own.stream().filter(l -> alongside(l, first)).toList();
    List<Slope> placed =
        along.stream().filter(l -> body.equals(Row.SHANK) || l.at().isPresent()).toList();
    Arg name = Arg.of(body);
    if (Row.position(body) >= foot) {
      sayings.add(Saying.of("shares-behind-foot", ABOUT, name, Arg.of(reference())));
    } else if (along.isEmpty()) {
      String code = own.isEmpty() ? "shares-no-line" : "shares-other-push";
      sayings.add(Saying.of(code, ABOUT, name));
    } else if (placed.isEmpty()) {
      sayings.add(Saying.of("shares-no-distance", ABOUT, name));
    } else {
      bodies.put(body, placed);
      ahead(body, placed);
    }
  }

  /** Behind the nut a distance in front of it is most likely a sign forgotten. */
  private void ahead(String body, List<Slope> lines) {
    double farthest = lines.stream().mapToDouble(l -> l.at().orElse(0.0)).max().orElse(0);
    if (!body.equals(Row.SHANK) && farthest > 0) {
      Arg where = Arg.of(farthest, Unit.MILLIMETRE);
      sayings.add(Saying.of("shares-ahead-of-face", ABOUT, Arg.of(body), where));
    }
  }

  /** Whether a line is along the first one, push and dial alike. */
  private static boolean alongside(Slope line, Slope first) {
    return LoadLines.alongside(line.push(), first.push())
        && LoadLines.alongside(line.dial(), first.dial());
  }

  private Carrying carrying() {
    return new Carrying(readings, readings.contact().orElseThrow(), draws);
  }

  /** The bodies from the load to the foot. */
  private List<Travel> row(int foot) {
    Carrying carrying = carrying();
    List<Travel> row = new ArrayList<>();
    for (int position = 1; position < foot; position++) {
      int at = position;
      bodies.forEach(
          (body, lines) -> {
            if (Row.position(body) == at) {
              row.addAll(at == 1 ? carrying.shank(lines) : List.of(carrying.rigid(at, lines)));
            }
          });
    }
    row.add(new Travel(foot, Measured.exact(0, Unit.MICROMETRE_PER_NEWTON), Travel.Kind.KNOWN));
    return row;
  }
}
