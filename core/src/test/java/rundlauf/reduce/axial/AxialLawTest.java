package rundlauf.reduce.axial;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.reduce.axial.WrittenAxials.readings;
import static rundlauf.reduce.axial.WrittenAxials.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.sideload.PushedNose;

/** Symmetry, scaling, and how often the intervals hold the truth of a made nose. */
class AxialLawTest {
  private static final double STEP = 10e-6;

  private static List<Point> taken(long seed) {
    var nose = new PushedNose(1.2e6, 25e-6, 3e-6, 2e-6, 4, 40, true, true, 0, 0);
    return nose.taken(Stream.of(seed, "axial")).points();
  }

  private static List<Point> changed(List<Point> points, UnaryOperator<Point> change) {
    List<Point> all = new ArrayList<>();
    points.forEach(p -> all.add(change.apply(p)));
    return all;
  }

  private static Point with(Point p, double load, double reading, double direction, double dial) {
    return new Point(
        load, reading, p.place(), p.at(), direction, dial, p.branch(), p.zeroed(), p.line());
  }

  private static double turned(double direction) {
    return Math.PI - direction;
  }

  private static void same(Axial a, Axial b, double times) {
    Map<String, Figure> first = a.figures();
    b.figures()
        .forEach(
            (path, figure) -> {
              Figure.Estimate e = figure.estimate().orElseThrow();
              Figure.Estimate f = requireNonNull(first.get(path)).estimate().orElseThrow();
              double by = path.equals("axialStiffness") ? 1 / times : times;
              double alike = 1e-9 * Math.abs(f.value());
              assertThat(e.value()).as(path).isCloseTo(by * f.value(), within(alike));
              assertThat(e.interval().low()).isCloseTo(by * f.interval().low(), within(alike));
              assertThat(e.interval().high()).isCloseTo(by * f.interval().high(), within(alike));
            });
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void readFromTheOtherEndNothingChangesButTheDraws(long seed) {
    List<Point> points = taken(seed);
    var other = changed(points, p -> with(p, p.load(), -p.reading(), p.direction(), Math.PI));
    Map<String, Figure> first = reduce(STEP, points).figures();
    reduce(STEP, other)
        .figures()
        .forEach(
            (path, figure) -> {
              Figure.Estimate e = requireNonNull(first.get(path)).estimate().orElseThrow();
              assertThat(figure.value()).as(path).isCloseTo(e.value(), within(0.2 * e.u()));
            });
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void pushAndPullAreAlike(long seed) {
    List<Point> points = taken(seed);
    var other =
        changed(points, p -> with(p, p.load(), p.reading(), turned(p.direction()), Math.PI));
    same(reduce(STEP, points), reduce(STEP, other), 1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 3, 25.4})
  void readingsScaleFigures(double times) {
    List<Point> points = taken(4);
    var other =
        changed(points, p -> with(p, p.load(), times * p.reading(), p.direction(), p.dial()));
    Axial scaled = reduce(readings(times * STEP, other));
    same(reduce(STEP, points), scaled, times);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.2, 0.5})
  void intervalsHoldTheTruth(double divisions) {
    Stream stream = Stream.of(23, "axial " + divisions);
    int play = 0;
    int compliance = 0;
    int trials = 80;
    for (int i = 0; i < trials; i++) {
      double stiffness = 0.5e6 * Math.pow(10, stream.uniform());
      double gap = 40e-6 * stream.uniform();
      var nose =
          new PushedNose(
              stiffness,
              gap,
              4e-6 * stream.uniform(),
              divisions * STEP,
              4,
              40,
              true,
              true,
              0,
              0.01);
      LoadReadings readings = nose.taken(stream);
      Axial found = AxialReduction.reduce(readings, new Draws(3, 800), Work.sequential());
      play += holds(found.endPlay(), gap) ? 1 : 0;
      compliance += holds(found.compliance(), 1 / stiffness) ? 1 : 0;
    }
    // 80 trials: two standard errors under 95 % are 72; the lines' own law has the long runs
    assertThat(play).isGreaterThanOrEqualTo(73);
    assertThat(compliance).isGreaterThanOrEqualTo(73);
  }

  private static boolean holds(Figure figure, double truth) {
    return figure.estimate().orElseThrow().interval().holds(truth);
  }
}
