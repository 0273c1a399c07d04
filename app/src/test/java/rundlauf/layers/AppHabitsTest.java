package rundlauf.layers;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Habits of the app: names, the one exit, no default locale, nothing of the world in the middle.
 */
class AppHabitsTest {
  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPath(Path.of("target", "classes"));

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
  void onlyMainEndsTheProgram() {
    noClasses()
        .that()
        .resideOutsideOfPackage("rundlauf")
        .should()
        .accessTargetWhere(
            DescribedPredicate.describe(
                "it ends the program",
                access ->
                    Set.of("exit", "halt").contains(access.getName())
                        && access.getTargetOwner().getPackageName().equals("java.lang")))
        .check(OURS);
  }

  @Test
  void useCasesAndWordingTouchNoFiles() {
    noClasses()
        .that()
        .resideInAnyPackage("rundlauf.usecase..", "rundlauf.wire..", "rundlauf.render..")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.nio.file.Files")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.File")
        .because("files are touched at the edge, behind a port")
        .allowEmptyShould(true)
        .check(OURS);
  }

  @Test
  void nothingReadsTheDefaultLocale() {
    noClasses()
        .should()
        .accessTargetWhere(
            DescribedPredicate.describe("it is the default locale", AppHabitsTest::defaultLocale))
        .because("a comma or a point must not depend on the machine")
        .check(OURS);
  }

  private static boolean defaultLocale(JavaAccess<?> access) {
    String call = access.getTarget().getFullName();
    return call.equals("java.lang.String.toLowerCase()")
        || call.equals("java.lang.String.toUpperCase()")
        || call.startsWith("java.lang.String.formatted(")
        || call.startsWith("java.lang.String.format(java.lang.String,")
        || call.startsWith("java.io.PrintStream.printf(java.lang.String,")
        || call.startsWith("java.io.PrintWriter.printf(java.lang.String,")
        || call.equals("java.text.MessageFormat.<init>(java.lang.String)")
        || call.startsWith("java.text.MessageFormat.format(java.lang.String,")
        || call.equals("java.util.Locale.getDefault()");
  }
}
