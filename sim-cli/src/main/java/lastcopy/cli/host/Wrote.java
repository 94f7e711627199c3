package lastcopy.cli.host;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Says what files were written, on standard error: standard output is for results alone. */
public final class Wrote {

  private Wrote() {}

  /** One line, or none where nothing was written. */
  public static void say(Host host, List<Path> files) {
    if (!files.isEmpty()) {
      String names = files.stream().map(Path::toString).collect(Collectors.joining(", "));
      host.err().println("lastcopy: wrote " + names);
    }
  }
}
