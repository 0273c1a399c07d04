package rundlauf.layers;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Who may see whom in core. */
class CoreLayersTest {
  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("rundlauf");

  @TestFactory
  Stream<DynamicTest> everyPackageSeesOnlyWhatItsRowAllows() {
    return CorePermissions.MAY_SEE.keySet().stream()
        .map(row -> dynamicTest(row, () -> seesOnlyItsRow(row)));
  }

  private static void seesOnlyItsRow(String row) {
    classes()
        .that()
        .resideInAPackage("rundlauf." + row + "..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(CorePermissions.allowed(row))
        .because(row + " may see only " + CorePermissions.MAY_SEE.get(row) + " and plain Java")
        .allowEmptyShould(true) // rows for parts of the route that are not built yet
        .check(OURS);
  }

  @Test
  void everyClassLiesInAPackageThatHasARow() {
    TreeSet<String> strangers =
        OURS.stream()
            .map(
                c -> c.getPackageName().replaceFirst("^rundlauf\\.?", "").replaceFirst("\\..*", ""))
            .filter(first -> !CorePermissions.MAY_SEE.containsKey(first))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(strangers).isEmpty();
    assertThat(OURS).hasSizeGreaterThan(40);
  }

  @Test
  void noCycles() {
    slices().matching("rundlauf.(**)").should().beFreeOfCycles().check(OURS);
  }

  @Test
  void noReductionSeesAnother() {
    slices()
        .matching("rundlauf.reduce.(*)..")
        .should()
        .notDependOnEachOther()
        .ignoreDependency(alwaysTrue(), resideInAPackage("rundlauf.reduce.push"))
        .because("reduce.push is no reduction but what those of pushes share: docs/decisions/0006")
        .check(OURS);
  }

  @Test
  void noRowSeesItselfThroughAnother() {
    CorePermissions.MAY_SEE.forEach(
        (row, others) ->
            others.forEach(
                other -> assertThat(CorePermissions.MAY_SEE.get(other)).doesNotContain(row)));
  }
}
