package lastcopy.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;

/** Holds the arrows between the packages of the command line: no command knows another. */
@AnalyzeClasses(packages = "lastcopy.cli", importOptions = ImportOption.DoNotIncludeTests.class)
class CommandLineArchitectureTest {

  private static final List<String> SHARED =
      List.of("option", "host", "output", "scenario", "scenario.yaml");

  /** Each package below {@code lastcopy.cli}, and those that it may use. */
  private static final Map<String, List<String>> ARROWS =
      Map.ofEntries(
          Map.entry("scenario.yaml", List.of()),
          Map.entry("scenario.value", List.of("scenario.yaml")),
          Map.entry("scenario.part", List.of("scenario.value", "scenario.yaml")),
          Map.entry("scenario.choice", List.of("scenario.part", "scenario.value", "scenario.yaml")),
          Map.entry(
              "scenario",
              List.of("scenario.choice", "scenario.part", "scenario.value", "scenario.yaml")),
          Map.entry("edit", List.of("scenario", "scenario.choice", "scenario.yaml")),
          Map.entry("output", List.of("scenario")),
          Map.entry("host", List.of("scenario", "scenario.yaml", "output")),
          Map.entry(
              "option", List.of("scenario", "scenario.value", "scenario.yaml", "output", "host")),
          Map.entry(
              "compare", List.of("option", "host", "output", "scenario", "sentence", "report")),
          Map.entry("advise", List.of("edit", "option", "host", "output", "scenario")),
          Map.entry(
              "ask",
              List.of("option", "host", "output", "scenario", "scenario.value", "scenario.yaml")),
          Map.entry("inspect", SHARED),
          Map.entry("story", SHARED),
          Map.entry("prove", SHARED),
          Map.entry("fit", SHARED),
          Map.entry("rates", SHARED),
          Map.entry(
              "levers",
              List.of("levers.deed", "edit", "option", "host", "output", "scenario", "sentence")),
          Map.entry("levers.deed", List.of("edit", "scenario")),
          Map.entry("report", List.of("scenario", "output", "sentence")),
          Map.entry("sentence", List.of("scenario", "scenario.yaml", "output")));

  @ArchTest
  static void arrowsPointDown(JavaClasses all) {
    ARROWS.forEach(
        (from, to) -> {
          String[] others =
              ARROWS.keySet().stream()
                  .filter(other -> !other.equals(from) && !to.contains(other))
                  .map(other -> "lastcopy.cli." + other)
                  .toArray(String[]::new);
          noClasses()
              .that()
              .resideInAPackage("lastcopy.cli." + from)
              .should()
              .dependOnClassesThat()
              .resideInAnyPackage(others)
              .check(all);
        });
  }

  @ArchTest
  static final ArchRule NO_CIRCLES = slices().matching("lastcopy.(**)").should().beFreeOfCycles();

  /** A package that the arrows forget would be held by nothing. */
  @ArchTest
  static final ArchRule NO_OTHER_PACKAGES =
      classes()
          .that()
          .resideOutsideOfPackage("lastcopy.cli")
          .should()
          .resideInAnyPackage(
              ARROWS.keySet().stream().map(name -> "lastcopy.cli." + name).toArray(String[]::new));
}
