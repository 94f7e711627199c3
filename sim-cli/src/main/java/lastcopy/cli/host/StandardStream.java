package lastcopy.cli.host;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A standard stream that remembers why it could not be written, which a print stream forgets. UTF-8
 * whatever the locale, since JSON must be.
 */
public final class StandardStream extends PrintStream {

  private final Remembering target;

  public StandardStream(FileDescriptor descriptor) {
    this(new Remembering(new FileOutputStream(descriptor)));
  }

  public StandardStream(OutputStream to) {
    this(new Remembering(to));
  }

  private StandardStream(Remembering target) {
    super(new BufferedOutputStream(target), true, StandardCharsets.UTF_8);
    this.target = target;
  }

  /** Why anything printed did not get through; empty if all did. */
  public static Optional<IOException> failure(PrintStream stream) {
    if (!stream.checkError()) {
      return Optional.empty();
    }
    IOException known = stream instanceof StandardStream standard ? standard.target.first : null;
    return Optional.of(known == null ? new IOException("it is closed") : known);
  }

  private static final class Remembering extends FilterOutputStream {
    private IOException first;

    Remembering(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      try {
        out.write(bytes, from, count);
      } catch (IOException e) {
        first = first == null ? e : first;
        throw e;
      }
    }
  }
}
