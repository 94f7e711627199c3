package lastcopy.cli.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.Reference;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Lines edited on a terminal, with those before them at the arrow keys. */
final class EditedInput implements Input {

  private static final String BACK = "ask-back";

  private final Terminal terminal;
  private final LineReader reader;

  /**
   * Takes the terminal.
   *
   * @throws IOException if there is none that can do it
   */
  EditedInput() throws IOException {
    terminal =
        TerminalBuilder.builder()
            .system(true)
            .dumb(false)
            .exec(true)
            .jni(false)
            .jna(false)
            .jansi(false)
            .ffm(false)
            .build();
    reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.BRACKETED_PASTE, false)
            .variable(LineReader.HISTORY_IGNORE, OwnerQuestion.BACK)
            .build();
    reader.getWidgets().put(BACK, this::back);
    reader.getKeyMaps().get(LineReader.MAIN).bind(new Reference(BACK), OwnerQuestion.BACK);
  }

  /** One key in an empty line goes back; in a line with something in it, it is a letter. */
  private boolean back() {
    boolean alone = reader.getBuffer().length() == 0;
    reader.getBuffer().write(OwnerQuestion.BACK);
    if (alone) {
      reader.callWidget(LineReader.ACCEPT_LINE);
    }
    return true;
  }

  @Override
  public Optional<String> line(String prompt) throws StoppedException {
    try {
      return Optional.of(reader.readLine(prompt));
    } catch (UserInterruptException | EndOfFileException e) {
      throw new StoppedException();
    }
  }

  @Override
  public void close() {
    try {
      terminal.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
