package rundlauf.wire;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import com.code_intelligence.jazzer.mutation.annotation.NotNull;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/**
 * Any text as what a sheet sends, or as a document of a package: refused by a sentence, or read.
 */
class SentFuzzTest {
  private static final List<String> WHOLE =
      List.of(
          "{\"key\": \"k1\", \"cells\": [{\"column\": \"reading_um\", \"text\": \"10\"}]}",
          "{\"reason\": \"misread\"}",
          "{\"rundlauf\": \"0.1.0\", \"seed\": 1, \"draws\": 4000, \"trials\": [{\"file\": \"a\","
              + " \"method\": {\"version\": 1}, \"figures\": {\"tir\": {\"value\": 1.5, \"unit\":"
              + " \"um\", \"u\": 0.1, \"low\": 1, \"high\": 2}}}]}",
          "{\"resources\": [{\"path\": \"bench.yaml\", \"bytes\": 12, \"hash\": \"sha256:00\"}]}");

  /** Whole documents, and the same with a hole, a piece twice or a stranger in them. */
  static Stream<Arguments> seeds() {
    SplittableRandom random = new SplittableRandom(20261125);
    List<Arguments> seeds = new ArrayList<>();
    for (String whole : WHOLE) {
      seeds.add(Arguments.of(whole));
      for (int i = 0; i < 60; i++) {
        int from = random.nextInt(whole.length());
        int to = Math.min(whole.length(), from + random.nextInt(1, 12));
        String piece = whole.substring(from, to);
        String instead = List.of("", piece + piece, "null", "[", "1e999", "\u0000").get(i % 6);
        seeds.add(Arguments.of(whole.substring(0, from) + instead + whole.substring(to)));
      }
    }
    seeds.add(Arguments.of("[".repeat(5000)));
    return seeds.stream();
  }

  @MethodSource("seeds")
  @FuzzTest(maxDuration = "2m")
  void isReadOrRefused(@NotNull String text) {
    List<Consumer<String>> readers =
        List.of(
            SentReading::read,
            SentReading::reason,
            t ->
                FiguresDocument.read(t, "figures.json")
                    .trials()
                    .values()
                    .forEach(PublishedNumbers::of),
            t -> DescriptorDocument.read(t, "datapackage.json"));
    for (Consumer<String> reader : readers) {
      try {
        reader.accept(text);
      } catch (Refused refused) {
        assertThat(Sentences.refusal(refused).line()).isNotBlank();
      }
    }
  }
}
