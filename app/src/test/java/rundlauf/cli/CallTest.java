package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.Ran;

/** How the program is called, and what it says when it is called wrongly. */
class CallTest {
  // Each row: the arguments, what is found, what to do.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          mill                          | rundlauf does not take "mill"                 | "rundlauf --help" shows what it takes
          reduce                        | rundlauf reduce needs TRIAL                   | "rundlauf reduce --help" shows what it takes
          reduce a.yaml --jsn           | rundlauf reduce does not take "--jsn"         | "rundlauf reduce --help" shows what it takes
          reduce a.yaml --seed          | rundlauf reduce needs --seed                  | "rundlauf reduce --help" shows what it takes
          reduce a.yaml --seed one      | rundlauf reduce: --seed is a whole number, not "one" | "rundlauf reduce --help" shows what it takes
          reduce a.yaml --draws 199     | rundlauf reduce: --draws is a number from 200 to 1000000, not 199 | leave it out for the default
          reduce a.yaml --draws 1000001 | rundlauf reduce: --draws is a number from 200 to 1000000, not 1000001 | leave it out for the default
          compare                       | rundlauf compare needs BENCH                  | "rundlauf compare --help" shows what it takes
          compare a b                   | rundlauf compare does not take "b"            | "rundlauf compare --help" shows what it takes
          """)
  void aWrongCallIsOneSentence(String args, String found, String remedy) {
    Ran ran = Ran.of(words(args));
    assertThat(ran.err()).isEqualTo(found + " — " + remedy + System.lineSeparator());
    assertThat(ran.out()).isEmpty();
    assertThat(ran.status()).isEqualTo(2);
  }

  @Test
  void withoutACommandTheCommandsAreNamed() {
    Ran ran = Ran.of();
    assertThat(ran.err())
        .startsWith("no command is given — give one of: demo, serve, reduce, compare");
    assertThat(ran.out()).isEmpty();
    assertThat(ran.status()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --help         | reduce     Reduces trials
          -h             | compare    Puts every setup
          reduce --help  | Trial files (YAML).
          reduce --help  | --draws=COUNT
          compare --help | the folder with bench.yaml
          serve --help   | --port=P
          publish --help | --out=DIR
          import --help  | Takes a package
          """)
  void helpGoesToStandardOutput(String args, String holds) {
    Ran ran = Ran.of(words(args));
    assertThat(ran.out()).contains(holds);
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.status()).isZero();
  }

  @Test
  void theVersionIsTheBuilds() throws Exception {
    Ran ran = Ran.of("--version");
    String version = ran.out().strip().replace("rundlauf ", "");
    assertThat(version).isNotEmpty();
    assertThat(Files.readString(Path.of("..", "pom.xml")))
        .containsPattern("<version>" + version + "(-SNAPSHOT)?</version>");
    assertThat(ran.status()).isZero();
  }

  @Test
  void aFileNameThatBeginsWithAtIsAFileName() {
    Ran ran = Ran.of("reduce", "@list");
    assertThat(ran.err()).startsWith("@list: there is no file or folder of this name");
    assertThat(ran.status()).isEqualTo(3);
  }

  private static String[] words(String args) {
    return Arrays.stream(args.split(" ")).filter(word -> !word.isEmpty()).toArray(String[]::new);
  }
}
