package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Completion and the manual hold every command and every option. */
class ManualTest {

  private static final Path BASH = Path.of("/bin/bash");

  @TempDir Path directory;

  @BeforeEach
  void make() throws IOException {
    ManualMaker.write(directory);
  }

  @Test
  void everyOptionOfEveryCommandIsInThePageOfItsCommand() throws IOException {
    CommandLine root = ManualMaker.commands();
    assertThat(root.getSubcommands())
        .containsKeys("compare", "inspect", "story", "levers", "advise", "fit", "rates", "prove");
    String first = page("lastcopy");
    root.getSubcommands().keySet().forEach(name -> assertThat(first).contains(name));
    for (CommandLine command : ManualMaker.all(root)) {
      String page = page(command.getCommandSpec().qualifiedName("-"));
      List<OptionSpec> options = command.getCommandSpec().options();
      assertThat(options).isNotEmpty();
      for (OptionSpec option : options) {
        assertThat(page).contains("*" + option.longestName() + "*").contains(option.description());
      }
    }
  }

  @Test
  void everyOptionOfEveryCommandIsCompleted() throws IOException {
    String script = Files.readString(directory.resolve("lastcopy_completion"));
    for (CommandLine command : ManualMaker.all(ManualMaker.commands())) {
      String name =
          command.getCommandSpec().qualifiedName("_").replaceFirst("^lastcopy$", "lastcopy");
      int from = script.indexOf("function _picocli_" + name + "() {");
      assertThat(from).as(name).isPositive();
      String function = script.substring(from, script.indexOf("\n}\n", from));
      for (OptionSpec option : command.getCommandSpec().options()) {
        assertThat(function).contains("'" + option.longestName() + "'");
      }
    }
  }

  /** The shell itself is asked what it offers. */
  @ParameterizedTest
  @CsvSource({
    "lastcopy com, compare",
    "lastcopy compare --chart-f, --chart-format",
    "lastcopy story --lay, --layout",
    "lastcopy inspect --tem, --template",
    "lastcopy compare --chart-format p, png",
    "lastcopy fit --unit d, days",
    "lastcopy fit --kind so, solid-state",
  })
  void bashCompletes(String typed, String offered) throws Exception {
    assumeTrue(Files.isExecutable(BASH), "no bash on this machine");
    String words = "'" + typed.replace(" ", "' '") + "'";
    String ask =
        "source lastcopy_completion; COMP_WORDS=("
            + words
            + "); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); "
            + "COMP_LINE='"
            + typed
            + "'; COMP_POINT=${#COMP_LINE}; "
            + "_complete_lastcopy; printf '%s\\n' \"${COMPREPLY[@]}\"";
    Process bash =
        new ProcessBuilder(BASH.toString(), "--norc", "-c", ask)
            .directory(directory.toFile())
            .redirectErrorStream(true)
            .start();
    String told = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(told.lines().map(String::strip)).contains(offered);
  }

  private String page(String command) throws IOException {
    return Files.readString(directory.resolve(command + ".adoc"));
  }
}
