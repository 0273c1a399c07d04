package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.sideload.Compliances.Reach;
import rundlauf.simulated.BodyRow;
import rundlauf.simulated.BodyRow.Joint;

/** The stiffness at other distances holds the truth, on a dial of 0.01 mm divisions. */
class ReachCoverageLawTest {
  private static final double STEP = 10e-6;
  private static final double MODULUS = 5.8e11;

  /** A row of joints, its shank gripped somewhere inside the nose. */
  private record Truth(BodyRow row, double grip) {
    static Truth drawn(Stream stream) {
      List<Joint> joints = new ArrayList<>();
      for (double middle : new double[] {6e-3, 25e-3, 60e-3}) {
        double arm = middle + 10e-3;
        double tilt = (0.1 + 0.7 * stream.uniform()) * 1e-6 / (arm * arm);
        joints.add(new Joint((0.05 + 0.45 * stream.uniform()) * 1e-6, tilt, middle));
      }
      return new Truth(new BodyRow(joints), 1.5e-3 * stream.uniform());
    }

    double travel(double a, double x) {
      return row.travel("shank", a, x) + ShankBending.compliance(a + grip, x + grip, 3e-3, MODULUS);
    }
  }

  private static void line(Truth truth, double a, double x, Stream stream, List<Point> points) {
    double zero = STEP * stream.uniform();
    Optional<Double> own = a == 10e-3 ? Optional.empty() : Optional.of(a);
    int zeroed = points.size();
    for (int side = 0; side < 2; side++) {
      for (int i = 0; i <= 6; i++) {
        double needle = zero + (1 - 2 * side) * truth.travel(a, x) * 5 * i;
        double read = Math.rint((needle + 1.5e-6 * stream.gaussian()) / STEP) * STEP;
        points.add(
            new Point(
                5.0 * i,
                read,
                "shank",
                Optional.of(x),
                side * Math.PI,
                0,
                Branch.UNSAID,
                zeroed,
                points.size() + 1,
                own));
      }
    }
  }

  private static LoadReadings readings(Truth truth, double[][] pairs, Stream stream) {
    List<Point> points = new ArrayList<>();
    for (double[] pair : pairs) {
      line(truth, pair[0], pair[1], stream, points);
    }
    var body =
        new LoadReadings.Body(
            Quantity.exact(3e-3, Unit.MILLIMETRE), Quantity.exact(MODULUS, Unit.GIGAPASCAL));
    return new LoadReadings(
        PushedNose.HEAD,
        PushedNose.dial(STEP, Optional.empty(), OptionalDouble.empty()),
        Measured.exact(1, Unit.ONE),
        Optional.of(Quantity.exact(10e-3, Unit.MILLIMETRE)),
        Optional.of(body),
        Optional.of("table"),
        Optional.empty(),
        points);
  }

  /** Share of stiffnesses at five distances that were held. */
  private static double held(int lines, int trials) {
    double[][] pairs = {{10e-3, 10e-3}, {25e-3, 25e-3}, {25e-3, 10e-3}};
    int held = 0;
    int told = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "reach " + lines);
      Truth truth = Truth.drawn(stream);
      double[][] read = Arrays.copyOf(pairs, lines);
      SideLoad found =
          SideLoadReduction.reduce(
              readings(truth, read, stream), new Draws(t, 500), Work.sequential());
      for (Reach reach : found.compliances().reach()) {
        double stiffness = 1 / truth.travel(reach.at(), reach.at());
        var interval = reach.stiffness().estimate().map(e -> e.interval());
        told += interval.isPresent() ? 1 : 0;
        held += interval.filter(i -> i.holds(stiffness)).isPresent() ? 1 : 0;
      }
    }
    assertThat(told).isGreaterThan(4 * trials);
    return held / (double) told;
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void intervalsHoldTheTruth(int lines) {
    assertThat(held(lines, 30)).isGreaterThanOrEqualTo(0.92);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void intervalsHoldTheTruthOverManyTrials(int lines) {
    double share = held(lines, 1000);
    System.out.println("reach from " + lines + " lines: held " + share);
    assertThat(share).isGreaterThanOrEqualTo(0.94);
  }
}
