package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.bench.Bench;
import rundlauf.files.BenchFiles;
import rundlauf.readings.TrialKind;
import rundlauf.render.workbook.FormField;
import rundlauf.render.workbook.TrialForm;

/** Whatever a trial's file may say can be said in the forms that begin it and tell how it went. */
class TrialFieldsTest {
  /** Said in another way: by the kind's link, a photo's own form, the sheet, names of the bench. */
  private static final String OTHERWISE =
      "trial|photos.*|readings.*|items.*|indicator\\..*|load\\..*|stand\\.name";

  private static final List<String> OF_ALL = List.of("intended.", "conditions.");

  private static List<FormField> fields(TrialKind kind) {
    Bench bench = BenchFiles.read(Pages.ROOT.resolve("demo").resolve("bench"), "demo/bench");
    List<FormField> fields = new ArrayList<>(TrialForm.begin(kind, bench, Map.of()));
    fields.addAll(TrialForm.conditions(kind, Map.of()));
    return fields;
  }

  private static Set<String> paths(List<FormField> fields) {
    Set<String> paths = new TreeSet<>();
    fields.forEach(f -> paths.add(f.path().replace("[]", "")));
    return paths;
  }

  private static Set<String> known(TrialKind kind) throws IOException {
    Set<String> known =
        new TreeSet<>(SchemaFields.of("trial-" + kind.word() + ".json", "").keySet());
    known.removeIf(path -> path.isEmpty() || path.matches(OTHERWISE));
    // Read as in a side load, and nothing along the axis hangs on them.
    known.removeIf(path -> kind == TrialKind.AXIAL && path.matches("contact|body\\..*"));
    return known;
  }

  @ParameterizedTest
  @EnumSource(TrialKind.class)
  void everyFieldOfAKindCanBeSaid(TrialKind kind) throws IOException {
    Set<String> known = known(kind);
    Set<String> own = new TreeSet<>(known);
    own.removeIf(path -> OF_ALL.stream().anyMatch(path::startsWith));
    Set<String> said = paths(fields(kind));
    assertThat(said).containsAll(own);
    assertThat(known).containsAll(said);
  }

  @ParameterizedTest
  @EnumSource(TrialKind.class)
  void everyFieldHasItsWords(TrialKind kind) {
    for (FormField field : fields(kind)) {
      assertThat(field.label()).as(field.path()).isNotBlank().doesNotContain("trial-field");
      assertThat(field.hint()).as(field.path()).isNotBlank();
    }
  }

  /** What any kind may say of its plan and its conditions, some kind asks for. */
  @ParameterizedTest
  @EnumSource(TrialKind.class)
  void everyPlanAndConditionIsAskedForSomewhere(TrialKind kind) throws IOException {
    Set<String> shared = known(kind);
    shared.removeIf(path -> OF_ALL.stream().noneMatch(path::startsWith));
    Set<String> said = new TreeSet<>();
    for (TrialKind any : TrialKind.values()) {
      said.addAll(paths(fields(any)));
    }
    assertThat(said).containsAll(shared);
  }
}
