package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.Ran;
import rundlauf.files.TrialFiles;
import rundlauf.maths.Work;
import rundlauf.usecase.ReduceTrial;
import rundlauf.usecase.TrialSource;

/** What breaks within the program is told in a sentence, and nobody sees a stack trace. */
class FaultTest {
  private static final TrialSource GOOD =
      file -> new TrialSource.Sourced(TrialFiles.parse(Sample.SPEED, file), Optional.empty());
  private static final TrialSource BROKEN =
      file -> {
        throw new IllegalStateException("tir is NaN");
      };

  @Test
  void aFaultOfOursIsASentence() {
    Ran ran = run(BROKEN, false, new ByteArrayOutputStream(), "reduce", "a.yaml");
    assertThat(ran.err())
        .isEqualToIgnoringNewLines(
            "a.yaml: a fault of this program, not of the file, ended the work on it"
                + " (IllegalStateException) — nothing was changed; run it again with"
                + " RUNDLAUF_DEBUG=1 set to see the details, and report them with the file");
    assertThat(ran.status()).isEqualTo(1);
  }

  @Test
  void itsDetailsAreShownWhereTheyAreAskedFor() {
    Ran ran = run(BROKEN, true, new ByteArrayOutputStream(), "reduce", "a.yaml");
    assertThat(ran.err()).contains("tir is NaN").contains("\tat rundlauf.");
  }

  @Test
  void aFaultIsALineOfItsOwnAndTheNextInputIsDone() throws Exception {
    TrialSource deep =
        file -> {
          if (file.equals("a.yaml")) {
            throw new StackOverflowError();
          }
          return GOOD.read(file);
        };
    Ran ran = run(deep, false, new ByteArrayOutputStream(), "reduce", "--json", "a.yaml", "b.yaml");
    var json = new ObjectMapper();
    assertThat(ran.lines()).hasSize(2);
    assertThat(json.readTree(ran.lines().get(0)).at("/error/code").textValue()).isEqualTo("fault");
    assertThat(json.readTree(ran.lines().get(1)).get("file").textValue()).isEqualTo("b.yaml");
    assertThat(ran.status()).isEqualTo(1);
  }

  @Test
  void aReaderThatLeavesIsNotSpokenTo() {
    Ran ran = run(GOOD, false, new Shut("Broken pipe"), "reduce", "a.yaml");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.status()).isZero();
  }

  @Test
  void resultsThatCannotBeWrittenAreAFault() {
    Ran ran = run(GOOD, false, new Shut("No space left on device"), "reduce", "a.yaml");
    assertThat(ran.err())
        .isEqualToIgnoringNewLines(
            "the results could not be written: No space left on device — make room, or write"
                + " somewhere else");
    assertThat(ran.status()).isEqualTo(1);
  }

  private static Ran run(TrialSource source, boolean debug, OutputStream out, String... args) {
    var err = new ByteArrayOutputStream();
    var console = new Console(out, err, debug);
    var reduce = new ReduceCommand(new ReduceTrial(source, Work.sequential()), console);
    int status = CommandLines.run(List.of(reduce), console, args);
    String given =
        out instanceof ByteArrayOutputStream kept ? kept.toString(StandardCharsets.UTF_8) : "";
    return new Ran(status, given, err.toString(StandardCharsets.UTF_8));
  }

  /** A stream that takes nothing. */
  private static final class Shut extends OutputStream {
    private final String reason;

    Shut(String reason) {
      this.reason = reason;
    }

    @Override
    public void write(int octet) throws IOException {
      throw new IOException(reason);
    }
  }
}
