package lastcopy.cli.ask;

import java.io.IOException;
import java.util.Optional;

/** Lines that somebody types, or that come from a pipe. */
public interface Input extends AutoCloseable {

  /** Whoever was asked wants no more of it. */
  final class StoppedException extends Exception {

    private static final long serialVersionUID = 1L;

    StoppedException() {
      super("stopped");
    }
  }

  /**
   * The next line.
   *
   * @param prompt shown before it
   * @return empty at the end of a pipe
   * @throws StoppedException if a person ends the conversation
   * @throws IOException if nothing can be read
   */
  Optional<String> line(String prompt) throws StoppedException, IOException;

  /** Puts the terminal in order; nothing is read afterwards. */
  @Override
  void close();
}
