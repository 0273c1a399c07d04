package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.bench.Entry;
import rundlauf.files.BenchFiles;
import rundlauf.quantity.Place;
import rundlauf.render.workbook.FormField;
import rundlauf.render.workbook.KitForm;

/** The forms of a bench's equipment have the fields and the words of its schema, and no others. */
class KitFieldsTest {
  static List<String> sections() {
    return KitForm.names();
  }

  @ParameterizedTest
  @MethodSource("sections")
  void everyFieldStandsInItsFormAndTheOtherWayRound(String section) throws IOException {
    Set<String> forms = new TreeSet<>();
    KitForm.paths(section).forEach(path -> forms.add(path.replace("[]", "")));
    assertThat(forms).isEqualTo(new TreeSet<>(known(section).keySet()));
  }

  @ParameterizedTest
  @MethodSource("sections")
  void aFieldOffersTheWordsThatAreTaken(String section) throws IOException {
    Map<String, Set<String>> known = known(section);
    var bench = BenchFiles.read(Pages.ROOT.resolve("demo").resolve("bench"), "demo/bench");
    var nothing = new Entry.Fields(Map.of(), Map.of(), Place.NOWHERE);
    for (FormField field : KitForm.of(section, bench, nothing, Map.of())) {
      boolean names = section.equals("setups") && !field.choices().isEmpty();
      if (!names) {
        assertThat(new LinkedHashSet<>(field.choices()))
            .as(field.path())
            .isEqualTo(known.getOrDefault(field.path().replace("[]", ""), Set.of()));
      }
      assertThat(field.label()).as(field.path()).isNotBlank();
      assertThat(field.hint()).as(field.path()).isNotBlank();
    }
  }

  /** The schema's fields by path, with the words that each takes; none: any text of its kind. */
  private static Map<String, Set<String>> known(String section) throws IOException {
    Map<String, Set<String>> known =
        SchemaFields.of("bench.json", "/properties/" + section + "/items");
    // A material of one's own has a section; a job names it.
    known.keySet().removeIf(p -> section.equals("jobs") && p.startsWith("material") && !named(p));
    return known;
  }

  private static boolean named(String path) {
    return path.equals("material.name");
  }
}
