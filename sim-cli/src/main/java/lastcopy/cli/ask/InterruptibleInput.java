package lastcopy.cli.ask;

import java.io.IOException;
import java.util.Optional;
import lastcopy.cli.host.Interruption;

/** While a line is waited for, whatever asks to stop ends the process at once. */
final class InterruptibleInput implements Input {

  private final Input input;
  private final Interruption interruption;

  InterruptibleInput(Input input, Interruption interruption) {
    this.input = input;
    this.interruption = interruption;
  }

  @Override
  public Optional<String> line(String prompt) throws StoppedException, IOException {
    interruption.waits(input::close);
    try {
      return input.line(prompt);
    } finally {
      interruption.waitsNoMore();
    }
  }

  @Override
  public void close() {
    input.close();
  }
}
