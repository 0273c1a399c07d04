package rundlauf.layers;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What core does without: the clock, chance, threads, the machine's locale, unsteady order. */
class CoreHabitsTest {
  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("rundlauf");

  private static final Set<String> WORLD =
      Set.of(
          "java.lang.System",
          "java.lang.Thread",
          "java.lang.ThreadLocal",
          "java.lang.Runtime",
          "java.lang.Process",
          "java.lang.ProcessBuilder",
          "java.time.Clock",
          "java.util.Calendar",
          "java.util.Date",
          "java.util.Random",
          "java.util.ResourceBundle",
          "java.util.Scanner",
          "java.util.ServiceLoader",
          "java.util.Timer",
          "java.util.UUID");

  private static final Set<String> UNSTEADY =
      Set.of(
          "java.util.HashMap",
          "java.util.HashSet",
          "java.util.IdentityHashMap",
          "java.util.WeakHashMap");

  @Test
  void coreTouchesNothingOfTheWorld() {
    forbidden(
            "the clock, threads, the system, chance",
            access -> WORLD.contains(access.getTargetOwner().getName()))
        .check(OURS);
  }

  @Test
  void coreAsksNoClock() {
    forbidden(
            "now()",
            access -> access.getTarget().getFullName().matches("java\\.time\\..*\\.now\\(.*"))
        .check(OURS);
  }

  @Test
  void coreThrowsNoDice() {
    forbidden(
            "Math.random()",
            access -> access.getTarget().getFullName().equals("java.lang.Math.random()"))
        .check(OURS);
  }

  @Test
  void noParallelStreams() {
    forbidden("parallel", access -> access.getName().startsWith("parallel")).check(OURS);
  }

  @Test
  void orderIsTheSameInEveryRun() {
    forbidden("a map or set without a steady order", Unsteady::is).check(OURS);
  }

  @Test
  void nothingReadsTheDefaultLocale() {
    forbidden("the default locale", DefaultLocale::is).check(OURS);
  }

  private static String owner(JavaAccess<?> access) {
    return access.getTargetOwner().getName();
  }

  private static ArchRule forbidden(String what, Predicate<JavaAccess<?>> is) {
    return noClasses()
        .should()
        .accessTargetWhere(DescribedPredicate.describe("it is " + what, is))
        .because("same input, same digits, whenever and wherever it runs");
  }

  /** Collections whose order changes from run to run or from JDK to JDK. */
  private static final class Unsteady {
    /** Maps and sets of more than one entry, copies of either, collectors that choose for us. */
    private static final Pattern CALL =
        Pattern.compile(
            "java\\.util\\.(Map|Set)\\.copyOf\\(.*"
                + "|java\\.util\\.Map\\.ofEntries\\(.*"
                + "|java\\.util\\.Map\\.of\\(.*,.*,.*"
                + "|java\\.util\\.Set\\.of\\(.*(,|\\[L).*"
                + "|java\\.util\\.stream\\.Collectors\\.(toSet|toUnmodifiable(Set|Map))\\(.*");

    private static final Pattern MAP_OF_ITS_OWN_CHOICE =
        Pattern.compile(
            "java\\.util\\.stream\\.Collectors\\.(toMap|groupingBy)\\((?!.*Supplier).*");

    static boolean is(JavaAccess<?> access) {
      if (access.getName().equals("<init>")) {
        return UNSTEADY.contains(owner(access));
      }
      String call = access.getTarget().getFullName();
      return CALL.matcher(call).matches() || MAP_OF_ITS_OWN_CHOICE.matcher(call).matches();
    }
  }

  /** Calls that print or fold text by the machine's locale. */
  private static final class DefaultLocale {
    static boolean is(JavaAccess<?> access) {
      String call = access.getTarget().getFullName();
      return call.equals("java.lang.String.toLowerCase()")
          || call.equals("java.lang.String.toUpperCase()")
          || call.startsWith("java.lang.String.formatted(")
          || call.startsWith("java.lang.String.format(java.lang.String,")
          || call.equals("java.util.Locale.getDefault()");
    }
  }
}
