package lastcopy.cli.fit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import lastcopy.cli.Program;
import lastcopy.cli.host.Host;
import lastcopy.cli.host.Interruption;
import lastcopy.cli.host.ScenarioLoading;
import lastcopy.worlds.WorldSimulation;

/**
 * One run of the command without a process.
 *
 * @param status its status
 * @param out what it printed
 * @param err what it said
 */
record FitRun(int status, String out, String err) {

  static final LocalDate TODAY = LocalDate.of(2026, 1, 1);

  static FitRun ofFile(Path records, String... options) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Host host =
        new Host(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            ScenarioLoading::fromFile,
            WorldSimulation::run,
            () -> TODAY,
            new Interruption());
    List<String> line = new ArrayList<>(List.of("fit", records.toString()));
    line.addAll(List.of(options));
    int status = new Program(host).run(line.toArray(String[]::new));
    return new FitRun(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** With the text of the records. */
  static FitRun of(Path folder, String records, String... options) throws IOException {
    return ofFile(Files.writeString(folder.resolve("records.csv"), records), options);
  }

  /** What it printed as JSON. */
  JsonNode json() {
    try {
      return new ObjectMapper().readTree(out);
    } catch (IOException e) {
      throw new UncheckedIOException(out, e);
    }
  }
}
