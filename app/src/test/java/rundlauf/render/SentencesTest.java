package rundlauf.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** The bundle has what the sources ask of it, and sentences come out as they should. */
class SentencesTest {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("rundlauf.render.sentences", java.util.Locale.ROOT);

  /** A refusal's code: behind its place, also where one of two is chosen. */
  private static final Pattern REFUSED =
      Pattern.compile("Refused\\.at\\(\\s*[^;]*?\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");

  private static final Pattern CHOSEN =
      Pattern.compile(
          "code =[^;]*?\"([a-z0-9]+(?:-[a-z0-9]+)+)\"[^;\"]*(?:\"([a-z0-9-]+)\"[^;\"]*)?;"
              + "\\s*(?:throw|return) Refused\\.at\\(");

  /** The part of a cause, named where the cause is made. */
  private static final Pattern CAUSE =
      Pattern.compile("Cause\\s*\\.(?:normal|rectangular|scatter)\\([^;\"]*\"([a-z-]+)\"");

  private static final Pattern SAID =
      Pattern.compile("Saying\\.of\\(\\s*\"([a-z0-9]+(?:-[a-z0-9]+)*)\"");

  @Test
  void everyRefusalHasItsSentenceAndItsRemedy() {
    List<String> codes = new ArrayList<>(found(REFUSED));
    codes.addAll(found(CHOSEN));
    assertThat(codes)
        .contains("comma-parted", "unit-missing", "unit-missing-or-comma", "path-leads-out");
    assertThat(codes).allSatisfy(code -> assertThat(BUNDLE.containsKey(code)).as(code).isTrue());
    assertThat(codes)
        .allSatisfy(code -> assertThat(BUNDLE.containsKey(code + ".remedy")).as(code).isTrue());
  }

  @Test
  void everySayingHasItsSentence() {
    assertThat(found(SAID))
        .allSatisfy(code -> assertThat(BUNDLE.containsKey(code)).as(code).isTrue());
  }

  @Test
  void everyRemedyIsAskedFor() {
    String all = String.join("\n", sources());
    List<String> remedies =
        BUNDLE.keySet().stream().filter(k -> k.endsWith(".remedy")).sorted().toList();
    assertThat(remedies).hasSizeGreaterThan(100);
    assertThat(remedies)
        .allSatisfy(k -> assertThat(all).contains("\"" + k.replace(".remedy", "") + "\""));
  }

  @Test
  void everyCauseHasItsWord() {
    assertThat(found(CAUSE))
        .contains("limit-of-error", "clamping", "scatter")
        .allSatisfy(part -> assertThat(Sentences.term(part)).isNotBlank());
  }

  @Test
  void everyDimensionHasItsWord() {
    for (Dimension dimension : Dimension.values()) {
      String code = dimension.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      assertThat(Sentences.term(code)).isNotBlank();
    }
  }

  @Test
  void argumentsArePrintedByTheirKind() {
    Saying saying =
        Saying.of("column-unit-unknown", "", Arg.typed("kg"), Arg.of("reading"), Arg.of("a, b"));
    assertThat(Sentences.text(saying)).isEqualTo("\"kg\" is not a unit for the column \"reading\"");
    Saying amount = Saying.of("turn-not-covered", "", Arg.of(Math.PI, Unit.DEGREE));
    assertThat(Sentences.text(amount)).startsWith("180 deg of the turn");
    Saying count = Saying.of("file-too-large", "", Arg.of(64_000_000));
    assertThat(Sentences.text(count)).isEqualTo("the file has more than 64000000 bytes");
    Saying number = Saying.of("file-not-read", "", Arg.number(0.1 + 0.2));
    assertThat(Sentences.text(number)).isEqualTo("the file could not be read: 0.3");
  }

  @Test
  void whatWasTypedIsCutAndMadeVisible() {
    Refused refused =
        Refused.at(Place.NOWHERE, "number-not-read", Arg.typed("\u001b[2J" + "9".repeat(100)));
    assertThat(Sentences.refusal(refused).text())
        .isEqualTo("\"·[2J" + "9".repeat(44) + "…\" is not a number that can be read");
  }

  @Test
  void aCodeWithoutSentenceIsOurMistake() {
    assertThatThrownBy(() -> Sentences.text(Saying.of("no-such-code", "")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no sentence for no-such-code");
  }

  private static Set<String> found(Pattern pattern) {
    Set<String> codes = new TreeSet<>();
    for (String source : sources()) {
      pattern.matcher(source).results().forEach(r -> addGroups(r, codes));
    }
    return codes;
  }

  private static void addGroups(MatchResult result, Set<String> codes) {
    for (int i = 1; i <= result.groupCount(); i++) {
      if (result.group(i) != null) {
        codes.add(result.group(i));
      }
    }
  }

  private static List<String> sources() {
    try (Stream<Path> core = Files.walk(Path.of("../core/src/main/java"));
        Stream<Path> app = Files.walk(Path.of("src/main/java"))) {
      List<Path> files =
          Stream.concat(core, app).filter(p -> p.toString().endsWith(".java")).sorted().toList();
      List<String> texts = new ArrayList<>();
      for (Path file : files) {
        texts.add(Files.readString(file));
      }
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
