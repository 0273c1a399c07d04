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
  void coreAsksNoClockAndThrowsNoDice() {
    forbidden(
            "now() or Math.random()",
            access ->
                owner(access).startsWith("java.time.") && access.getName().equals("now")
                    || owner(access).equals("java.lang.Math") && access.getName().equals("random"))
        .check(OURS);
  }

  @Test
  void noParallelStreams() {
    forbidden(
            "a parallel stream",
            access ->
                access.getName().equals("parallel")
                    || access.getName().equals("parallelStream")
                    || access.getName().startsWith("parallelPrefix")
                    || access.getName().startsWith("parallelSort")
                    || access.getName().startsWith("parallelSetAll"))
        .check(OURS);
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
    static boolean is(JavaAccess<?> access) {
      String owner = owner(access);
      String name = access.getName();
      String full = access.getTarget().getFullName();
      int arguments = full.split(",", -1).length;
      return name.equals("<init>") && UNSTEADY.contains(owner)
          || name.equals("copyOf") && Set.of("java.util.Map", "java.util.Set").contains(owner)
          || name.equals("ofEntries") && owner.equals("java.util.Map")
          || name.equals("of") && owner.equals("java.util.Map") && arguments > 2
          || name.equals("of")
              && owner.equals("java.util.Set")
              && (arguments > 1 || full.contains("[L"))
          || owner.equals("java.util.stream.Collectors") && unsteadyCollector(access);
    }

    private static boolean unsteadyCollector(JavaAccess<?> access) {
      String call = access.getTarget().getFullName();
      return access.getName().startsWith("toUnmodifiableSet")
          || access.getName().startsWith("toUnmodifiableMap")
          || access.getName().equals("toSet")
          || access.getName().matches("toMap|groupingBy") && !call.contains("Supplier");
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
