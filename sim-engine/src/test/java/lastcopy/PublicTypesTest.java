package lastcopy;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * What a program that uses the engine as a library may hold on to: the public types of these
 * packages, and what these hold, by name in {@code public-types.txt}. One more, or one less, is a
 * decision, taken by changing that file. Other packages are the engine's own: their public types
 * are public only so that other packages of the engine can use them.
 */
class PublicTypesTest {

  private static final List<String> LIBRARY =
      List.of(
          "lastcopy.scenario",
          "lastcopy.law",
          "lastcopy.experiment",
          "lastcopy.simulate",
          "lastcopy.worlds",
          "lastcopy.story",
          "lastcopy.outlook");

  /** What those hold and hand out, of packages that are otherwise the engine's own. */
  private static final List<String> HELD =
      List.of(
          "lastcopy.interval.Estimate",
          "lastcopy.history.report.Cause",
          "lastcopy.history.report.GivenUpException",
          "lastcopy.history.report.Happening",
          "lastcopy.history.report.Happening$Kind",
          "lastcopy.history.report.Loss",
          "lastcopy.history.report.Snapshot");

  private static Iterable<JavaClass> classes() {
    return new ClassFileImporter(List.of(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS))
        .importPackages("lastcopy");
  }

  @Test
  void publicTypesAreThoseThatWereDecided() throws IOException {
    List<String> found =
        stream()
            .filter(
                type -> LIBRARY.contains(type.getPackageName()) || HELD.contains(type.getName()))
            .filter(PublicTypesTest::isPublic)
            .map(JavaClass::getName)
            .sorted()
            .toList();
    try (var stored = PublicTypesTest.class.getResourceAsStream("public-types.txt")) {
      String text = new String(stored.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(found).isEqualTo(Arrays.asList(text.strip().split("\n")));
    }
  }

  private static Stream<JavaClass> stream() {
    return StreamSupport.stream(classes().spliterator(), false);
  }

  private static boolean isPublic(JavaClass type) {
    boolean here = type.getModifiers().contains(JavaModifier.PUBLIC);
    return here && type.getEnclosingClass().map(PublicTypesTest::isPublic).orElse(true);
  }
}
