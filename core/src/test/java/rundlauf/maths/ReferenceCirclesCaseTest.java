package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceCirclesCaseTest {
  private static Samples column(String id, int c) throws IOException {
    List<String> lines = Files.readAllLines(Path.of("../cases/metrology/circle_" + id + ".csv"));
    return Samples.of(
        lines.stream()
            .filter(l -> !l.startsWith("#") && !l.startsWith("x"))
            .map(l -> Double.parseDouble(l.split(",")[c]))
            .toList());
  }

  private static void same(Circle circle, double x, double y) {
    assertThat(circle.x()).isCloseTo(x, within(1e-7));
    assertThat(circle.y()).isCloseTo(y, within(1e-7));
  }

  // source: SciPy Cookbook, least squares circle (cookbook6: centre, radius, published)
  // source: Gander, Golub and Strebel, BIT 34 (1994) 558-578, points of gander6
  // source: recomputed: least-squares centres and widths by another program, metrology cases
  @ParameterizedTest
  @CsvSource({
    "cookbook6,10.50008621,9.65994951,3.1264649",
    "osgeo4,6.08113147,3.62995117,0.3316631",
    "ellipse8,3.04323825,0.74567831,0.6603870",
    "gander6,4.73978241,2.98353271,1.4130027"
  })
  void leastSquares(String id, double x, double y, double width) throws IOException {
    Circle circle = ReferenceCircles.leastSquares(column(id, 0), column(id, 1)).orElseThrow();
    same(circle, x, y);
    assertThat(circle.width()).isCloseTo(width, within(1e-6));
  }

  // source: recomputed: minimum zones by trying all contacts, 60 restarts of a simplex method
  @ParameterizedTest
  @CsvSource({
    "cookbook6,10.25363276,9.27476882,21.8324001893,24.7569919778",
    "osgeo4,6.04191796,3.64201237,6.5540896288,6.8389424659",
    "ellipse8,3.12104968,0.87590586,3.8282788785,4.3994387959",
    "gander6,4.77272727,0.40909091,6.2406955535,7.5943106151"
  })
  void minimumZone(String id, double x, double y, double inner, double outer) throws IOException {
    Samples xs = column(id, 0);
    Samples ys = column(id, 1);
    Circle start = ReferenceCircles.leastSquares(xs, ys).orElseThrow();
    Circle circle = ReferenceCircles.minimumZone(start, xs, ys).orElseThrow();
    same(circle, x, y);
    assertThat(circle.inner()).isCloseTo(inner, within(1e-9));
    assertThat(circle.outer()).isCloseTo(outer, within(1e-9));
  }

  // source: recomputed: circumscribed circles by trying all contact pairs and triples
  @ParameterizedTest
  @CsvSource({
    "cookbook6,10.84076433,9.91082803,24.1594002355,3.18592149",
    "osgeo4,6.22654729,3.82351901,6.7805207827,0.48450345",
    "ellipse8,3.2,0.72631579,4.3381002263,0.65361527"
  })
  void minimumCircumscribed(String id, double x, double y, double radius, double width)
      throws IOException {
    Circle circle = EnclosingCircle.of(column(id, 0), column(id, 1));
    same(circle, x, y);
    assertThat(circle.outer()).isCloseTo(radius, within(1e-9));
    assertThat(circle.width()).isCloseTo(width, within(1e-7));
  }

  // source: recomputed: inscribed circles by trying all contact triples, centre inside the hull
  @ParameterizedTest
  @CsvSource({
    "cookbook6,8.62367491,10.28798587,22.0447304241,4.33316678",
    "osgeo4,6.16771330,3.44062614,6.6275204561,0.44878142",
    "ellipse8,2.83459344,0.65042796,3.9719166653,0.73849332"
  })
  void maximumInscribed(String id, double x, double y, double radius, double width)
      throws IOException {
    Samples xs = column(id, 0);
    Samples ys = column(id, 1);
    Circle start = ReferenceCircles.leastSquares(xs, ys).orElseThrow();
    Circle circle = ReferenceCircles.maximumInscribed(start, xs, ys).orElseThrow();
    same(circle, x, y);
    assertThat(circle.inner()).isCloseTo(radius, within(1e-9));
    assertThat(circle.width()).isCloseTo(width, within(1e-7));
  }

  // source: recomputed: gander6 is an arc: smallest circle (5, 6), r 4.1231056256, none inscribed
  @ParameterizedTest
  @CsvSource("gander6,5,6,4.1231056256")
  void anArc(String id, double x, double y, double radius) throws IOException {
    Circle outside = EnclosingCircle.of(column(id, 0), column(id, 1));
    same(outside, x, y);
    assertThat(outside.outer()).isCloseTo(radius, within(1e-9));
    Circle start = ReferenceCircles.leastSquares(column(id, 0), column(id, 1)).orElseThrow();
    assertThat(ReferenceCircles.maximumInscribed(start, column(id, 0), column(id, 1))).isEmpty();
  }

  /** Checks that the case files are whole. */
  @ParameterizedTest
  @CsvSource({"cookbook6,6", "osgeo4,4", "ellipse8,8", "gander6,6"})
  void points(String id, int count) throws IOException {
    assertThat(Arrays.asList(column(id, 0).size(), column(id, 1).size())).containsOnly(count);
  }
}
