package lastcopy;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Holds the arrows: data flow one way, and the engine knows no files, terminals or charts. */
@AnalyzeClasses(packages = "lastcopy", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule ARROWS =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("number")
          .definedBy("lastcopy.number")
          .layer("law")
          .definedBy("lastcopy.law")
          .layer("random")
          .definedBy("lastcopy.random")
          .layer("kernel")
          .definedBy("lastcopy.kernel")
          .layer("interval")
          .definedBy("lastcopy.interval")
          .layer("scenario")
          .definedBy("lastcopy.scenario")
          .layer("footage")
          .definedBy("lastcopy.footage")
          .layer("outlook")
          .definedBy("lastcopy.outlook")
          .layer("history")
          .definedBy("lastcopy.history")
          .layer("simulate")
          .definedBy("lastcopy.simulate")
          .layer("exact")
          .definedBy("lastcopy.exact")
          .layer("prove")
          .definedBy("lastcopy.prove")
          .whereLayer("number")
          .mayNotAccessAnyLayer()
          .whereLayer("law")
          .mayOnlyAccessLayers("number")
          .whereLayer("random")
          .mayOnlyAccessLayers("number")
          .whereLayer("kernel")
          .mayNotAccessAnyLayer()
          .whereLayer("interval")
          .mayNotAccessAnyLayer()
          .whereLayer("scenario")
          .mayOnlyAccessLayers("law")
          .whereLayer("footage")
          .mayOnlyAccessLayers("scenario")
          .whereLayer("outlook")
          .mayOnlyAccessLayers("scenario", "footage", "law")
          .whereLayer("history")
          .mayOnlyAccessLayers("scenario", "law", "random", "kernel", "footage")
          .whereLayer("simulate")
          .mayOnlyAccessLayers("history", "interval", "scenario", "footage")
          .whereLayer("exact")
          .mayOnlyAccessLayers("law", "scenario")
          .whereLayer("prove")
          .mayOnlyAccessLayers(
              "exact", "simulate", "scenario", "law", "interval", "random", "outlook");

  @ArchTest
  static final ArchRule ENGINE_ALONE =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "picocli..", "org.snakeyaml..", "org.jfree..", "java.io..", "java.awt..");

  @ArchTest
  static final ArchRule NO_STATE_IN_STATICS = fields().that().areStatic().should().beFinal();

  /** A package that the arrows forget would be held by nothing. */
  @ArchTest
  static final ArchRule NO_OTHER_PACKAGES =
      classes()
          .should()
          .resideInAnyPackage(
              "lastcopy.number",
              "lastcopy.law",
              "lastcopy.random",
              "lastcopy.kernel",
              "lastcopy.interval",
              "lastcopy.scenario",
              "lastcopy.footage",
              "lastcopy.outlook",
              "lastcopy.history",
              "lastcopy.simulate",
              "lastcopy.exact",
              "lastcopy.prove");

  /** Draws come from keyed streams alone, so that a history can be replayed by its number. */
  @ArchTest
  static final ArchRule NOBODY_ELSE_DRAWS =
      noClasses()
          .should()
          .dependOnClassesThat(assignableTo(java.util.random.RandomGenerator.class))
          .orShould()
          .callMethod(Math.class, "random");
}
