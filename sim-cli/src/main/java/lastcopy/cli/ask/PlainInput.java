package lastcopy.cli.ask;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import lastcopy.cli.scenario.yaml.Printable;

/** Lines as they come, without a sign that moves a cursor. */
public final class PlainInput implements Input {

  private final BufferedReader lines;
  private final PrintStream out;
  private final boolean person;

  /**
   * Reads a stream.
   *
   * @param person whether somebody sits at a terminal, which shows what is typed; from a pipe it is
   *     shown here
   */
  public PlainInput(InputStream in, PrintStream out, boolean person) {
    this.lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    this.out = out;
    this.person = person;
  }

  @Override
  public Optional<String> line(String prompt) throws StoppedException, IOException {
    out.print(prompt);
    out.flush();
    Optional<String> line = Optional.ofNullable(lines.readLine());
    if (person && line.isEmpty()) {
      out.println();
      throw new StoppedException();
    }
    if (!person) {
      out.println(Printable.of(line.orElse("")));
    }
    return line;
  }

  @Override
  public void close() {
    // What others gave is closed by them.
  }
}
