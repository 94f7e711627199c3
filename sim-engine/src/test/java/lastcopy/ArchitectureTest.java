package lastcopy;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameStartingWith;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lastcopy.history.hazard.Bias;
import lastcopy.history.hazard.PathStatistics;

/** Holds the arrows: data flow one way, and the engine knows no files, terminals or charts. */
@AnalyzeClasses(packages = "lastcopy", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** Each package, and those that it may use. A package that is not named here is none. */
  private static final Map<String, List<String>> ARROWS =
      Map.ofEntries(
          uses("number"),
          uses("law", "number"),
          uses("random", "number"),
          uses("kernel"),
          uses("interval"),
          uses("fit", "law", "interval", "number"),
          uses("typical", "law"),
          uses("words", "interval"),
          uses("scenario", "law"),
          uses("footage", "scenario"),
          uses("outlook", "scenario", "footage", "law"),
          uses("outlook.room", "outlook", "scenario", "footage"),
          uses("history.report"),
          uses(
              "history.plan",
              "history.report",
              "scenario",
              "law",
              "number",
              "random",
              "kernel",
              "footage"),
          uses("history.course", "history.plan", "scenario", "random", "footage"),
          uses(
              "history.hazard",
              "history.course",
              "history.plan",
              "history.report",
              "law",
              "number",
              "kernel",
              "footage"),
          uses("history.state", "history.course", "history.plan", "kernel", "footage"),
          uses(
              "history.event",
              "history.state",
              "history.hazard",
              "history.course",
              "history.plan",
              "history.report",
              "scenario",
              "law",
              "kernel",
              "footage"),
          mechanism("drive"),
          mechanism("feed", "drive"),
          mechanism("desk", "drive", "feed"),
          mechanism("copy", "drive", "feed", "desk"),
          uses(
              "history.screen",
              "history.hazard",
              "history.course",
              "history.plan",
              "history.report",
              "scenario",
              "law",
              "number",
              "random",
              "footage"),
          uses(
              "history",
              "history.screen",
              "history.event",
              "history.event.drive",
              "history.event.feed",
              "history.event.desk",
              "history.event.copy",
              "history.state",
              "history.hazard",
              "history.course",
              "history.plan",
              "history.report",
              "scenario",
              "kernel",
              "footage"),
          uses("experiment", "interval"),
          uses("parallel", "history", "history.report"),
          uses(
              "simulate.count",
              "experiment",
              "history",
              "history.report",
              "interval",
              "scenario",
              "footage"),
          uses(
              "simulate.rare",
              "simulate.count",
              "experiment",
              "parallel",
              "history",
              "history.report",
              "history.hazard",
              "interval",
              "scenario"),
          uses(
              "simulate",
              "simulate.count",
              "simulate.rare",
              "experiment",
              "parallel",
              "history",
              "history.report",
              "interval",
              "scenario"),
          uses("worlds.surface", "interval"),
          uses(
              "worlds",
              "worlds.surface",
              "simulate",
              "simulate.count",
              "simulate.rare",
              "experiment",
              "parallel",
              "history",
              "history.report",
              "interval",
              "random",
              "scenario"),
          uses("decide.rule", "interval"),
          uses(
              "decide",
              "decide.rule",
              "simulate.rare",
              "experiment",
              "parallel",
              "history",
              "history.report",
              "interval",
              "scenario"),
          uses(
              "decide.assumed",
              "simulate.count",
              "parallel",
              "history",
              "history.report",
              "interval",
              "law",
              "scenario"),
          uses(
              "decide.effect",
              "simulate.count",
              "simulate.rare",
              "experiment",
              "parallel",
              "history",
              "history.report",
              "interval",
              "scenario"),
          uses(
              "story",
              "simulate",
              "simulate.count",
              "simulate.rare",
              "experiment",
              "parallel",
              "history",
              "history.report",
              "history.hazard",
              "interval",
              "scenario",
              "footage"),
          uses("exact", "law", "scenario"),
          uses(
              "prove",
              "exact",
              "simulate",
              "experiment",
              "scenario",
              "law",
              "interval",
              "random",
              "outlook",
              "fit"));

  private static Map.Entry<String, List<String>> uses(String from, String... to) {
    return Map.entry(from, List.of(to));
  }

  /** A room of mechanisms, which uses what all share, and rooms before it. */
  private static Map.Entry<String, List<String>> mechanism(String room, String... before) {
    List<String> to =
        new ArrayList<>(
            List.of(
                "history.event",
                "history.state",
                "history.hazard",
                "history.course",
                "history.plan",
                "history.report",
                "scenario",
                "kernel",
                "footage"));
    for (String each : before) {
      to.add("history.event." + each);
    }
    return Map.entry("history.event." + room, List.copyOf(to));
  }

  @ArchTest
  static void arrowsPointDown(JavaClasses engine) {
    ARROWS.forEach(
        (from, to) -> {
          String[] others =
              ARROWS.keySet().stream()
                  .filter(other -> !other.equals(from) && !to.contains(other))
                  .map(other -> "lastcopy." + other)
                  .toArray(String[]::new);
          noClasses()
              .that()
              .resideInAPackage("lastcopy." + from)
              .should()
              .dependOnClassesThat()
              .resideInAnyPackage(others)
              .check(engine);
        });
  }

  @ArchTest
  static final ArchRule NO_CIRCLES = slices().matching("lastcopy.(**)").should().beFreeOfCycles();

  /** Of what makes a history, others know the bias and what it found, and nothing else. */
  @ArchTest
  static final ArchRule BIAS_ALONE =
      noClasses()
          .that()
          .resideOutsideOfPackage("lastcopy.history..")
          .should()
          .dependOnClassesThat(
              resideInAPackage("lastcopy.history.hazard")
                  .and(not(simpleNameStartingWith(Bias.class.getSimpleName())))
                  .and(not(equivalentTo(PathStatistics.class))));

  @ArchTest
  static final ArchRule ENGINE_ALONE =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "picocli..", "org.snakeyaml..", "org.jfree..", "java.io..", "java.awt..");

  @ArchTest
  static final ArchRule NO_STATE_IN_STATICS = fields().that().areStatic().should().beFinal();

  /** What is counted is read by methods, and changed by its own class alone. */
  @ArchTest
  static final ArchRule NO_PUBLIC_STATE = fields().that().areNotStatic().should().notBePublic();

  /** A package that the arrows forget would be held by nothing. */
  @ArchTest
  static final ArchRule NO_OTHER_PACKAGES =
      classes()
          .should()
          .resideInAnyPackage(
              ARROWS.keySet().stream().map(name -> "lastcopy." + name).toArray(String[]::new));

  /** Draws come from keyed streams alone, so that a history can be replayed by its number. */
  @ArchTest
  static final ArchRule NOBODY_ELSE_DRAWS =
      noClasses()
          .should()
          .dependOnClassesThat(assignableTo(java.util.random.RandomGenerator.class))
          .orShould()
          .callMethod(Math.class, "random");
}
