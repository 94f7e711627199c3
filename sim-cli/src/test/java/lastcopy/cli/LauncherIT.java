package lastcopy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts the finished jar: what ends it ends the program, which says how. */
class LauncherIT {

  private static final Path SCRIPT = Path.of("lastcopy").toAbsolutePath();

  private static final Path DEMO = Path.of("..", "scenarios", "harbour-mirror-or-far-copy.yaml");

  @TempDir Path folder;

  @BeforeEach
  void needsAShell() {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "needs a shell");
  }

  @Test
  void itsStatusIsThatOfTheProgram() throws Exception {
    assertThat(ended(started("--version"))).isZero();
    assertThat(out()).startsWith("lastcopy ");
    assertThat(ended(started("guess"))).isEqualTo(2);
    assertThat(out()).isEmpty();
  }

  @Test
  void nothingToReadFromIsNoFault() throws Exception {
    Process shell =
        new ProcessBuilder("/bin/sh", "-c", "'" + SCRIPT + "' --version <&- 2>&1").start();
    assertThat(shell.getInputStream().readAllBytes()).asString().startsWith("lastcopy ");
    assertThat(ended(shell)).isZero();
  }

  /** Red if Java is started beside the script with nothing to read from: no progress is shown. */
  @Test
  void aTerminalIsHandedOn() throws Exception {
    assumeTrue(System.getProperty("os.name").equals("Linux"), "other terminals, other tools");
    Path tool = Path.of("/usr/bin/script");
    assumeTrue(Files.isExecutable(tool), "needs a terminal");
    String line = "'" + SCRIPT + "' compare '" + DEMO + "' --precision 0.01% --time 6s";
    Process terminal =
        new ProcessBuilder(tool.toString(), "-qc", line, "/dev/null")
            .redirectInput(Path.of("/dev/null").toFile())
            .redirectOutput(folder.resolve("out").toFile())
            .start();
    assertThat(ended(terminal)).isZero();
    assertThat(out()).contains("histories, known to ");
  }

  /** Red if who is asked on a terminal cannot leave by the keyboard, or leaves a file behind. */
  @Test
  void controlCEndsTheQuestionsOnATerminal() throws Exception {
    assumeTrue(Jvm.heedsInterrupts(), "interrupts are ignored here");
    assumeTrue(System.getProperty("os.name").equals("Linux"), "other terminals, other tools");
    Path tool = Path.of("/usr/bin/script");
    assumeTrue(Files.isExecutable(tool), "needs a terminal");
    Path asked = folder.resolve("asked.yaml");
    String line = "stty cols 80 rows 40; exec '" + SCRIPT + "' ask --write '" + asked + "'";
    ProcessBuilder builder = new ProcessBuilder(tool.toString(), "-qec", line, "/dev/null");
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("TERM", "xterm");
    Process terminal = builder.redirectOutput(folder.resolve("out").toFile()).start();
    try (OutputStream keys = terminal.getOutputStream()) {
      shown("[My studio] > ");
      type(keys, "Gull Films\r");
      shown("[5] > ");
      type(keys, "\u0003");
      assertThat(ended(terminal)).as(out()).isEqualTo(130);
    }
    assertThat(out()).contains("stopped; nothing was written");
    assertThat(asked).doesNotExist();
  }

  private void shown(String words) throws Exception {
    for (int i = 0; i < 600 && !out().contains(words); i++) {
      Thread.sleep(100);
    }
    assertThat(out()).contains(words);
  }

  private static void type(OutputStream keys, String text) throws IOException {
    keys.write(text.getBytes(StandardCharsets.UTF_8));
    keys.flush();
  }

  /** Red if the script is ended and whoever asks goes on. */
  @Test
  void askedThroughAPipeItIsEndedByASignal() throws Exception {
    Path asked = folder.resolve("asked.yaml");
    Process script = started("ask", "--write", asked.toString());
    shown("[My studio] > ");
    List<ProcessHandle> all = script.descendants().toList();
    new ProcessBuilder("kill", "-TERM", Long.toString(script.pid())).start().waitFor();
    assertThat(ended(script)).isEqualTo(130);
    assertThat(all).noneMatch(ProcessHandle::isAlive);
    assertThat(asked).doesNotExist();
  }

  /** Red if the script waits for Java without telling it, or ends before it. */
  @Test
  void interruptedAtAnyInstant() throws Exception {
    interrupted(4, 5);
  }

  @Test
  @Tag("slow")
  void interruptedAtFiftyInstants() throws Exception {
    interrupted(50, 6);
  }

  private void interrupted(int times, long seed) throws Exception {
    SplittableRandom luck = new SplittableRandom(seed);
    int kept = 0;
    for (int i = 0; i < times; i++) {
      String signal = luck.nextBoolean() && Jvm.heedsInterrupts() ? "INT" : "TERM";
      long after = luck.nextLong(300, 6_000);
      Process script = started("compare", DEMO.toString(), "--precision", "0.01%");
      Thread.sleep(after);
      List<ProcessHandle> all = script.descendants().toList();
      new ProcessBuilder("kill", "-" + signal, Long.toString(script.pid())).start().waitFor();
      int status = ended(script);
      String when = signal + " after " + after + " ms: " + status + " " + out();
      assertThat(all).as(when).noneMatch(ProcessHandle::isAlive);
      // Before the program itself runs, the machine ends it in its own way.
      assertThat(status).as(when).isIn(130, 143);
      if (!out().isEmpty()) {
        kept++;
        assertThat(status).as(when).isEqualTo(130);
        assertThat(out()).as(when).contains("UNFINISHED");
      }
    }
    assertThat(kept).isPositive();
  }

  private Process started(String... arguments) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(SCRIPT.toString());
    builder.command().addAll(List.of(arguments));
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    return builder
        .redirectOutput(folder.resolve("out").toFile())
        .redirectError(folder.resolve("err").toFile())
        .start();
  }

  private static int ended(Process process) throws InterruptedException {
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return process.exitValue();
  }

  private String out() throws IOException {
    return Files.readString(folder.resolve("out"));
  }
}
