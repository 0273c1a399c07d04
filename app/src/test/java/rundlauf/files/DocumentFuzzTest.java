package rundlauf.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Cut;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/**
 * Any bytes as a document: refused by a sentence, or the same document when written and read again.
 * Runs on its seeds; with {@code JAZZER_FUZZ=1} it looks for more.
 */
class DocumentFuzzTest {
  @MethodSource("rundlauf.files.Seeds#trials")
  @FuzzTest(maxDuration = "2m")
  void aTrial(byte[] bytes) {
    try {
      String text = Utf8.text(bytes, "a.yaml");
      Trial trial = TrialFiles.parse(text, "a.yaml");
      Trial again = TrialFiles.parse(YamlText.of(trial.document()), "a.yaml");
      assertThat(Placeless.of(again)).isEqualTo(Placeless.of(trial));
      assertThat(outcome(again)).isEqualTo(outcome(trial));
    } catch (Refused refused) {
      assertThat(Sentences.refusal(refused).line()).isNotBlank();
    }
  }

  @MethodSource("rundlauf.files.Seeds#benches")
  @FuzzTest(maxDuration = "2m")
  void aBench(byte[] bytes) {
    try {
      Entry.Fields document = document(Utf8.text(bytes, "bench.yaml"));
      Entry.Fields again = document(YamlText.of(document));
      assertThat(Placeless.of(again)).isEqualTo(Placeless.of(document));
      assertThat(benchOutcome(again)).isEqualTo(benchOutcome(document));
    } catch (Refused refused) {
      assertThat(Sentences.refusal(refused).line()).isNotBlank();
    }
  }

  @MethodSource("rundlauf.files.Seeds#cuts")
  @FuzzTest(maxDuration = "2m")
  void aCut(byte[] bytes) {
    try {
      Cut cut = CutFiles.parse(Utf8.text(bytes, "cut.yaml"), "cut.yaml");
      Cut again = CutFiles.parse(YamlText.of(cut.document()), "cut.yaml");
      assertThat(Placeless.of(again)).isEqualTo(Placeless.of(cut));
    } catch (Refused refused) {
      assertThat(Sentences.refusal(refused).line()).isNotBlank();
    }
  }

  private static Entry.Fields document(String text) {
    return YamlDocument.read(text, "bench.yaml").fields();
  }

  /** The readings without their places, or the code of the refusal. */
  private static Object outcome(Trial trial) {
    try {
      return Placeless.of(Understanding.of(trial, Optional.empty()));
    } catch (Refused refused) {
      return refused.saying().code();
    }
  }

  private static Object benchOutcome(Entry.Fields document) {
    try {
      return Placeless.of(BenchReader.read("bench.yaml", document, List.of()));
    } catch (Refused refused) {
      return refused.saying().code();
    }
  }
}
