package rundlauf.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Unit;

/**
 * One line of {@code demo/truth.yaml}: what a figure of a demo trial truly was.
 *
 * @param trial file in {@code demo/bench/trials}
 * @param figure its path in the output
 * @param value SI
 * @param unit as written
 */
record DemoTruth(String trial, String figure, double value, Unit unit) {
  static final Path DEMO = Path.of("..", "demo");

  static List<DemoTruth> all() throws IOException {
    String text = Files.readString(DEMO.resolve("truth.yaml"));
    List<DemoTruth> truths = new ArrayList<>();
    Map<?, ?> trials = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
    trials.forEach(
        (trial, figures) -> {
          if (figures instanceof Map<?, ?> named) {
            named.forEach((figure, typed) -> truths.add(of(trial, figure, typed)));
          }
        });
    return truths;
  }

  private static DemoTruth of(Object trial, Object figure, Object typed) {
    String[] parts = typed.toString().split(" ", 2);
    Unit unit = Unit.ofSymbol(parts[1]).orElseThrow();
    double value = unit.toSi(Double.parseDouble(parts[0]));
    return new DemoTruth(trial.toString(), figure.toString(), value, unit);
  }

  String name() {
    return trial + " " + figure;
  }

  /** Whether the figure's interval holds the truth; an angle also a turn on. Empty: not had. */
  Optional<Boolean> heldBy(Figure found) {
    double turn = unit == Unit.DEGREE ? 2 * Math.PI : 0;
    return found
        .estimate()
        .map(
            e ->
                e.interval().holds(value)
                    || e.interval().holds(value + turn)
                    || e.interval().holds(value - turn));
  }
}
