package rundlauf.layers;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Names and shapes of core's types. */
class CoreShapesTest {
  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("rundlauf");

  /** What the caller provides, so core itself need not implement it twice. */
  private static final Set<String> PORTS = Set.of("rundlauf.maths.Work");

  @Test
  void noEmptyNames() {
    noClasses()
        .should()
        .haveNameMatching(".*(Util|Utils|Helper|Manager|Impl)")
        .orShould()
        .haveSimpleNameStartingWith("Abstract")
        .because("a type is named for what it is")
        .check(OURS);
  }

  @Test
  void anInterfaceHasTwoUsers() {
    List<String> lonely =
        OURS.stream()
            .filter(JavaClass::isInterface)
            .filter(c -> !c.isAnnotation() && !c.getSimpleName().equals("package-info"))
            .filter(c -> !PORTS.contains(c.getName()))
            .filter(c -> c.getAllSubclasses().stream().filter(s -> !s.isInterface()).count() < 2)
            .filter(c -> !c.isAnnotatedWith(FunctionalInterface.class))
            .map(JavaClass::getName)
            .sorted()
            .toList();
    assertThat(lonely).isEmpty();
  }

  @Test
  void noRecordHoldsABareArray() {
    List<String> bare =
        OURS.stream()
            .filter(JavaClass::isRecord)
            .flatMap(c -> c.getFields().stream())
            .filter(f -> !f.getModifiers().contains(JavaModifier.STATIC))
            .filter(f -> f.getRawType().isArray())
            .map(f -> f.getFullName())
            .sorted()
            .toList();
    assertThat(bare).isEmpty();
  }
}
