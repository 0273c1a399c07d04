package rundlauf.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** What the fuzz tests begin with: the demo, every refused file, and what once went wrong. */
final class Seeds {
  private static final Path DEMO = Path.of("../demo/bench");

  private static final String CUT =
      """
      material: {name: brass}
      cutter: {kind: end-mill, diameter: 3 mm, flutes: 2, helix: 30 deg, stickout: 20 mm}
      setup:
        eccentricity: 12 ± 2 um
        tilt: 0.2 um/mm
        stiffness: {x: 0.8 N/um, y: 0.5 N/um}
        modes: [{frequency: 900 Hz, damping: 3 %, stiffness: 0.8 N/um, direction: x}]
        speed: {min: 8000 rpm, max: 24000 rpm}
      operation: side-down
      speed: 18000 rpm
      feed: 540 mm/min
      axial: 0.5 mm
      radial: 0.2 mm
      """;

  private Seeds() {}

  static Stream<Arguments> trials() throws IOException {
    return Stream.of(demo(".yaml"), refused("a.yaml"), odd()).flatMap(s -> s).map(Seeds::bytes);
  }

  static Stream<Arguments> benches() throws IOException {
    return Stream.of(demo("bench.yaml"), refused("bench/bench.yaml"), odd())
        .flatMap(s -> s)
        .map(Seeds::bytes);
  }

  static Stream<Arguments> cuts() {
    return Stream.of(refused("cut.yaml"), odd(), Stream.of(CUT)).flatMap(s -> s).map(Seeds::bytes);
  }

  static Stream<Arguments> tables() throws IOException {
    return Stream.of(
            demo(".csv"),
            refused("a.csv"),
            Stream.of(
                "a;b\n1;\"2;3\"\n", "a\tb\n1\t2", "a,b\r1,2\r\r", "\"a\"\"b\",c\n1, \"2\" ,3"))
        .flatMap(s -> s)
        .map(Seeds::bytes);
  }

  static Stream<Arguments> quantities() {
    return Stream.of(
            "0.01 mm", "60 ± 0,5 mm", "1/8 in", "1,234 mm", "2 1/s", "5e-324", "1e308 kgf", "± N")
        .map(Arguments::of);
  }

  /** Documents that are hard to write back. */
  private static Stream<String> odd() {
    return List.of(
        "{trial: runout, indicator: {division: 01 mm}}",
        "trial: runout\nnotes: |2-\n    two\n  \n   three",
        "trial: runout\nnotes: |+\n  a\n\n\ntitle: \"\\x1b\\u2028\\U0001F600\"\n",
        "trial: {a: b\n\n c, d: , e: [[], {}, '']}",
        "\"a: b\": [x: y, {z}]\n? long\n: - - 1\n    -\n",
        "notes: >\n  folded\n  text\n\n   more\n",
        "--- # remark\n'it''s': \"\\\n  joined\"\n...\n")
        .stream();
  }

  private static Stream<String> demo(String end) throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      List<Path> sorted = files.filter(p -> p.toString().endsWith(end)).sorted().toList();
      Stream.Builder<String> texts = Stream.builder();
      for (Path file : sorted) {
        texts.add(Files.readString(file));
      }
      return texts.build();
    }
  }

  private static Stream<String> refused(String path) {
    return RefusalCases.all().stream()
        .filter(c -> c.files().containsKey(path))
        .map(c -> c.files().get(path));
  }

  private static Arguments bytes(String text) {
    return Arguments.of((Object) text.getBytes(StandardCharsets.UTF_8));
  }
}
