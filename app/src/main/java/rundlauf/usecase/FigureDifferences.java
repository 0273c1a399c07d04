package rundlauf.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Shown;
import rundlauf.usecase.PublishedFigures.Numbers;
import rundlauf.usecase.PublishedFigures.PublishedFigure;

/** Where the figures of a trial are not what was published. */
final class FigureDifferences {
  /** Relative: what processors and JDKs round differently. */
  private static final double ALIKE = 1e-9;

  /** Of the standard uncertainty: nobody reads a difference so small. */
  private static final double SHARE = 0.01;

  /** A figure that is not there. */
  private static final String NONE = "-";

  private FigureDifferences() {}

  static List<Saying> of(
      String file, Map<String, PublishedFigure> published, Map<String, Figure> now) {
    List<Saying> differs = new ArrayList<>();
    Map<String, PublishedFigure> left = new LinkedHashMap<>(published);
    now.forEach(
        (path, figure) -> {
          PublishedFigure was = left.remove(path);
          if (was == null || !same(was, figure)) {
            differs.add(difference(file, path, was == null ? NONE : said(was), said(figure)));
          }
        });
    left.forEach((path, was) -> differs.add(difference(file, path, said(was), NONE)));
    return differs;
  }

  private static Saying difference(String file, String path, String was, String now) {
    return Saying.of(
        "recompute-figure", path, Arg.of(file), Arg.of(path), Arg.of(was), Arg.of(now));
  }

  private static boolean same(PublishedFigure was, Figure now) {
    if (was.known().isPresent() != now.known() || !was.unit().equals(now.unit().symbol())) {
      return false;
    }
    return was.known().isEmpty() || same(was.known().get(), numbers(now).orElseThrow());
  }

  private static boolean same(Numbers a, Numbers b) {
    return near(a.value(), b.value(), a.u())
        && near(a.u(), b.u(), a.u())
        && near(a.low(), b.low(), a.u())
        && near(a.high(), b.high(), a.u());
  }

  private static boolean near(double a, double b, double u) {
    double allowed = Math.max(ALIKE * Math.max(Math.abs(a), Math.abs(b)), SHARE * u);
    return Math.abs(a - b) <= allowed;
  }

  private static Optional<Numbers> numbers(Figure figure) {
    return Shown.of(figure)
        .map(shown -> new Numbers(shown.value(), shown.u(), shown.low(), shown.high()));
  }

  private static String said(PublishedFigure figure) {
    return figure.known().map(n -> n.value() + " " + figure.unit()).orElse("null");
  }

  private static String said(Figure figure) {
    return numbers(figure).map(n -> n.value() + " " + figure.unit().symbol()).orElse("null");
  }
}
