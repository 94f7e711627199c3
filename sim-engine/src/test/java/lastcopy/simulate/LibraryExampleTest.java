package lastcopy.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringWriter;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import lastcopy.exact.RepairablePair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example in the package's documentation, taken from there, compiled and run. */
class LibraryExampleTest {

  private static final Path PAGE =
      Path.of("src", "main", "java", "lastcopy", "simulate", "package-info.java");

  private static final List<String> IMPORTS =
      List.of(
          "java.time.Duration",
          "java.util.*",
          "lastcopy.experiment.*",
          "lastcopy.interval.*",
          "lastcopy.law.*",
          "lastcopy.scenario.*",
          "lastcopy.simulate.*");

  @TempDir Path directory;

  /**
   * Only what is public, from another package. The chain of a pair under repair gives 0.03327; the
   * example stops at ±2 % of it (1.96 standard errors), so an error of 5 % of the chance is 4.9 of
   * them: an alarm in 1e-6.
   */
  @Test
  void theExampleCompilesAndPrintsTheExactChance() throws Exception {
    compile(program(example()));
    Matcher printed = Pattern.compile("(\\S+) \\((\\S+) to (\\S+)\\)\\s*").matcher(run());
    assertThat(printed.matches()).isTrue();
    double exact = new RepairablePair(1 / 50_000.0, 1 / 500.0).lossBy(87_600);
    double chance = Double.parseDouble(printed.group(1));
    assertThat(chance).isCloseTo(exact, within(0.05 * exact));
    assertThat(Double.parseDouble(printed.group(2))).isLessThan(chance);
    assertThat(Double.parseDouble(printed.group(3))).isGreaterThan(chance);
    assertThat(Files.readString(PAGE)).contains(String.format(Locale.ROOT, "near %.4f", exact));
  }

  private static String example() throws Exception {
    String page = Files.readString(PAGE);
    String code = page.substring(page.indexOf("<pre>{@code") + 11, page.indexOf("}</pre>"));
    return code.replaceAll("(?m)^ \\* ?", "");
  }

  private static String program(String statements) {
    StringBuilder source = new StringBuilder("package example;\n");
    IMPORTS.forEach(name -> source.append("import ").append(name).append(";\n"));
    return source
        .append("public class Example { public static void main(String[] arguments) {")
        .append(statements)
        .append("}}")
        .toString();
  }

  private void compile(String source) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter messages = new StringWriter();
    JavaFileObject file =
        new SimpleJavaFileObject(
            URI.create("string:///example/Example.java"), JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source;
          }
        };
    boolean compiled =
        compiler
            .getTask(
                messages,
                null,
                null,
                List.of("-proc:none", "-d", directory.toString(), "-cp", "target/classes"),
                null,
                List.of(file))
            .call();
    assertThat(compiled).as(messages.toString()).isTrue();
  }

  private String run() throws Exception {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    URL[] classes = {directory.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(classes, getClass().getClassLoader());
        PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8)) {
      System.setOut(out);
      loader
          .loadClass("example.Example")
          .getMethod("main", String[].class)
          .invoke(null, (Object) new String[0]);
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }
}
