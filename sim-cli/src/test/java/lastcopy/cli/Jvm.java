package lastcopy.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The program in a process of its own, with faults around it. */
final class Jvm {

  private static final long PATIENCE_SECONDS = 120;

  private final Path folder;
  private final List<String> options = new ArrayList<>();
  private final Map<String, String> environment = new HashMap<>();
  private Path home = Path.of(System.getProperty("java.home"));
  private String around = "exec \"$@\"";

  /** Streams go to files in a folder. */
  Jvm(Path folder) {
    this.folder = folder;
  }

  /** What came of it. */
  record Ended(int status, String out, String err) {}

  /** Whoever starts this in the background may have it, and what it starts, ignore SIGINT. */
  static boolean heedsInterrupts() throws IOException {
    Path status = Path.of("/proc/self/status");
    return !Files.exists(status)
        || Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("SigIgn:"))
            .noneMatch(line -> (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0);
  }

  Jvm with(String... more) {
    options.addAll(List.of(more));
    return this;
  }

  Jvm environment(String name, String value) {
    environment.put(name, value);
    return this;
  }

  Jvm on(Path otherHome) {
    home = otherHome;
    return this;
  }

  /** A line of shell around the program, which is {@code "$@"}. */
  Jvm shell(String line) {
    around = line;
    return this;
  }

  Ended run(String... args) throws IOException, InterruptedException {
    return ended(start(args));
  }

  Process start(String... args) throws IOException {
    List<String> line = new ArrayList<>(List.of("/bin/sh", "-c", around, "sh"));
    line.add(home.resolve("bin").resolve("java").toString());
    // One compiler and one collector thread: what is tried is the end, not the speed.
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    line.addAll(options);
    line.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    line.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    builder.environment().putAll(environment);
    return builder
        .redirectOutput(folder.resolve("out").toFile())
        .redirectError(folder.resolve("err").toFile())
        .start();
  }

  Ended ended(Process process) throws IOException, InterruptedException {
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("still running; it said " + text("err"));
    }
    return new Ended(process.exitValue(), text("out"), text("err"));
  }

  private String text(String name) {
    try {
      return Files.readString(folder.resolve(name), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
