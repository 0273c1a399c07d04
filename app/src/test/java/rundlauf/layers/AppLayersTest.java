package rundlauf.layers;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Who may see whom in the app. */
class AppLayersTest {
  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPath(Path.of("target", "classes"));

  @TestFactory
  Stream<DynamicTest> everyPackageSeesOnlyWhatItsRowAllows() {
    return AppPermissions.MAY_SEE.keySet().stream()
        .map(row -> dynamicTest(row, () -> seesOnlyItsRow(row)));
  }

  private static void seesOnlyItsRow(String row) {
    List<String> may = AppPermissions.MAY_SEE.get(row);
    String[] mayNot =
        Stream.concat(
                Stream.of("rundlauf"),
                AppPermissions.MAY_SEE.keySet().stream()
                    .filter(other -> !other.equals(row) && !may.contains(other))
                    .map(other -> "rundlauf." + other + ".."))
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage("rundlauf." + row + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(mayNot)
        .because(row + " may see core and " + may)
        .allowEmptyShould(true) // rows for edges and faces that are not built yet
        .check(OURS);
  }

  @Test
  void everyClassLiesInAPackageThatHasARow() {
    Set<String> strangers =
        OURS.stream()
            .filter(
                c -> c.getPackageName().startsWith("rundlauf")) // others are made by the templates
            .map(
                c -> c.getPackageName().replaceFirst("^rundlauf\\.?", "").replaceFirst("\\..*", ""))
            .filter(first -> !first.isEmpty() && !AppPermissions.MAY_SEE.containsKey(first))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(strangers).isEmpty();
  }

  @Test
  void mainAloneLiesAtTheRoot() {
    classes()
        .that()
        .resideInAPackage("rundlauf")
        .and()
        .doNotHaveSimpleName("package-info")
        .should()
        .haveSimpleNameStartingWith("Main")
        .check(OURS);
  }

  @Test
  void noCycles() {
    slices().matching("rundlauf.(**)").should().beFreeOfCycles().check(OURS);
  }

  @Test
  void onlyMainMakesEdges() {
    for (String edge : AppPermissions.EDGES) {
      noClasses()
          .that()
          .resideOutsideOfPackages("rundlauf", "rundlauf." + edge + "..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("rundlauf." + edge + "..")
          .check(OURS);
    }
  }

  @TestFactory
  Stream<DynamicTest> everyLibraryStaysAtHome() {
    return AppPermissions.HOME_OF.entrySet().stream()
        .map(
            home ->
                dynamicTest(
                    home.getKey(),
                    () ->
                        noClasses()
                            .that()
                            .resideOutsideOfPackages(home.getValue().toArray(String[]::new))
                            .should()
                            .dependOnClassesThat()
                            .resideInAPackage(home.getKey())
                            .allowEmptyShould(true)
                            .check(OURS)));
  }
}
