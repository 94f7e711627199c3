package lastcopy.oracle;

import java.util.HashSet;
import java.util.Set;

/** A deletion or malware that nobody has noticed yet. */
final class Blunder {

  final Stretches block;
  final Set<Vault> reached = new HashSet<>();
  boolean noticed;

  Blunder(Stretches block) {
    this.block = block;
  }
}
