package rundlauf.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.bench.Bench;
import rundlauf.bench.Job;
import rundlauf.planning.JobTasks;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** What is refused, and every word of it. */
class RefusalsTest {
  private static final Locale BEFORE = Locale.getDefault();

  @TempDir private Path folder;

  static List<RefusalCases.Case> cases() {
    return RefusalCases.all();
  }

  @AfterEach
  void backToTheLocaleBefore() {
    Locale.setDefault(BEFORE);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isSaidInFull(RefusalCases.Case one) throws IOException {
    Refused refused = refused(one, folder);
    assertThat(Sentences.refusal(refused).line()).isEqualTo(one.line());
    assertThat(refused.saying().code()).isEqualTo(one.code());
  }

  @Test
  void thereAreManyCases() {
    assertThat(cases()).hasSizeGreaterThan(140);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
  void isTheSameInEveryLocale(String tag) throws IOException {
    Locale.setDefault(Locale.forLanguageTag(tag));
    for (RefusalCases.Case one : cases()) {
      Refused refused = refused(one, Files.createTempDirectory(folder, "case"));
      assertThat(Sentences.refusal(refused).line()).isEqualTo(one.line());
    }
  }

  private static Refused refused(RefusalCases.Case one, Path folder) throws IOException {
    one.writeTo(folder);
    return catchThrowableOfType(Refused.class, () -> understand(folder));
  }

  private static void understand(Path folder) {
    Path bench = folder.resolve("bench");
    Path cut = folder.resolve("cut.yaml");
    Path job = folder.resolve("job.yaml");
    if (Files.exists(job)) {
      Job read = JobFiles.read(job, "job.yaml");
      JobTasks.of(read, BenchFiles.read(bench, "bench"));
    } else if (Files.exists(cut)) {
      CutFiles.read(cut, "cut.yaml");
    } else if (Files.exists(bench)) {
      Bench read = BenchFiles.read(bench, "bench");
      read.trials().forEach(trial -> Understanding.of(trial, Optional.of(read)));
    } else {
      Understanding.of(TrialFiles.read(folder.resolve("a.yaml"), "a.yaml"), Optional.empty());
    }
  }
}
