package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The pages for man that the build has made of picocli's AsciiDoc. */
class ManualIT {

  private static final Path PAGES = Path.of("target", "manual", "man1");

  private static final Path GROFF = Path.of("/usr/bin/groff");

  /** Red if a command has no page, or an option is not on the page of its command. */
  @Test
  void everyOptionIsOnThePageOfItsCommand() throws IOException {
    List<CommandLine> commands = ManualMaker.all(ManualMaker.commands());
    assertThat(pages()).hasSameSizeAs(commands);
    for (CommandLine command : commands) {
      String page = Files.readString(page(command)).replace("\\-", "-");
      assertThat(page).contains(".TH ", ".SH \"SYNOPSIS\"");
      for (OptionSpec option : command.getCommandSpec().options()) {
        assertThat(page).contains("\\fB" + option.longestName() + "\\fP");
      }
    }
  }

  /** Two builds give the same pages. Red if a page has a date. */
  @Test
  void noPageHasADate() throws IOException {
    for (Path page : pages()) {
      assertThat(page).content().doesNotContainPattern("\\b20[0-9][0-9]-[0-9]{2}-[0-9]{2}\\b");
    }
  }

  @Test
  void theTypesetterHasNothingToWarnOf() throws Exception {
    assumeTrue(Files.isExecutable(GROFF), "no groff on this machine");
    for (Path page : pages()) {
      Process groff =
          new ProcessBuilder(GROFF.toString(), "-man", "-Tutf8", "-ww", "-z", page.toString())
              .redirectErrorStream(true)
              .start();
      assertThat(groff.getInputStream().readAllBytes()).asString().isEmpty();
      assertThat(groff.waitFor()).isZero();
    }
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.list(PAGES)) {
      return files.toList();
    }
  }

  private static Path page(CommandLine command) {
    return PAGES.resolve(command.getCommandSpec().qualifiedName("-") + ".1");
  }
}
