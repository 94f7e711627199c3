package lastcopy.cli.ask;

import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import lastcopy.cli.host.Host;

/** Chooses how lines are read. */
public final class Inputs {

  private Inputs() {}

  /** Opens what is typed at this program. */
  public static Input open(Host host) {
    InputStream in = System.in;
    if (host.terminal() && canEdit()) {
      try {
        return new EditedInput();
      } catch (IOException | IllegalStateException e) {
        return new PlainInput(in, host.out(), true);
      }
    }
    return new PlainInput(in, host.out(), host.terminal());
  }

  /** A terminal that says it can do nothing is believed; other systems have no stty. */
  private static boolean canEdit() {
    String name = System.getenv().getOrDefault("TERM", "").toLowerCase(Locale.ROOT);
    return !name.isEmpty()
        && !name.equals("dumb")
        && !System.getProperty("os.name").startsWith("Windows");
  }
}
