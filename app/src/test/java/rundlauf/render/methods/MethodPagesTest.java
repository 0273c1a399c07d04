package rundlauf.render.methods;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Every method page as the workbook shows it. */
class MethodPagesTest {
  private static final Path FROZEN =
      Path.of("src/test/resources/rundlauf/render/methods/spans.txt");

  static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../docs/methods"))) {
      return files.map(file -> file.getFileName().toString().replace(".md", "")).sorted().toList();
    }
  }

  private static MethodPage page(String name) {
    return MethodPage.of(name).orElseThrow();
  }

  private static List<String> found(String pattern, String html) {
    List<String> all = new ArrayList<>();
    var matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(html);
    while (matcher.find()) {
      all.add(matcher.group(1));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("names")
  void isWellFormed(String name) throws Exception {
    MethodPage page = page(name);
    assertThat(page.title()).isNotBlank();
    var parser = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    parser.setErrorHandler(null);
    Document xml =
        parser.parse(new InputSource(new StringReader("<div>" + page.html() + "</div>")));
    assertThat(xml.getElementsByTagName("p").getLength()).isPositive();
    assertThat(xml.getElementsByTagName("script").getLength()).isZero();
  }

  @ParameterizedTest
  @MethodSource("names")
  void headingsGoDownOneLevelAtATime(String name) {
    int before = 1;
    for (String level : found("<h(\\d)", page(name).html())) {
      assertThat(Integer.parseInt(level)).isBetween(2, before + 1);
      before = Integer.parseInt(level);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void linksLeadToPagesThatAreThere(String name) {
    for (String to : found("href=\"([^\"]*)\"", page(name).html())) {
      if (to.startsWith("/method/")) {
        assertThat(MethodPage.of(to.substring(8).replaceFirst("#.*", ""))).as(to).isPresent();
      } else {
        assertThat(to).startsWith("https://");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void codeHasNothingOfAFormula(String name) {
    for (String code : found("<code>(.*?)</code>", page(name).html())) {
      assertThat(code).doesNotContainPattern("[√Σ∫^=|²³⁻ᵀᴴ]|\\p{IsGreek}| [+/−] ");
    }
  }

  /** Which spans are formulas and which are code: looked at, and frozen. */
  @Test
  void formulasAndCodeAreThoseLookedAt() throws IOException {
    TreeSet<String> formulas = new TreeSet<>();
    TreeSet<String> code = new TreeSet<>();
    for (String name : names()) {
      found("<span class=\"formula\"[^>]*><math alttext=\"(.*?)\"", page(name).html())
          .forEach(formulas::add);
      found("<code>([^<]*)</code>", page(name).html()).stream()
          .filter(span -> !span.contains("\n"))
          .forEach(code::add);
    }
    String all =
        "formulas\n" + String.join("\n", formulas) + "\n\ncode\n" + String.join("\n", code) + "\n";
    if (Boolean.getBoolean("rundlauf.refreeze")) {
      Files.writeString(FROZEN, all);
    }
    assertThat(all).isEqualTo(Files.readString(FROZEN));
  }

  @Test
  void theListNamesEveryPage() throws IOException {
    List<String> listed = found("href=\"/method/([^\"]*)\"", page(MethodPage.INDEX).html());
    assertThat(listed)
        .containsExactlyInAnyOrderElementsOf(
            names().stream().filter(name -> !name.equals(MethodPage.INDEX)).toList());
  }

  @Test
  void whatIsNoPageIsNotThere() {
    for (String name :
        List.of("", "nothing", "../sources", "runout.md", "README/", "a".repeat(61))) {
      assertThat(MethodPage.of(name)).as(name).isEmpty();
    }
  }

  @Test
  void thePagesInTheProgramAreThoseOfTheDocs() throws IOException {
    for (String name : names()) {
      try (InputStream in =
          MethodPage.class.getResourceAsStream("/rundlauf/methods/" + name + ".md")) {
        assertThat(in).isNotNull();
        assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
            .isEqualTo(Files.readString(Path.of("../docs/methods", name + ".md")));
      }
    }
  }
}
