package lastcopy.cli.edit;

import java.util.List;

/**
 * One change at a key of a file, in texts of one line as they would stand there.
 *
 * @param path the keys that lead to it from the top of the file
 * @param from what stood there; empty if nothing did
 * @param to what stands there afterwards; empty if nothing does
 */
public record Change(List<String> path, String from, String to) {

  /** Copies the path. */
  public Change {
    path = List.copyOf(path);
  }

  /** The keys, joined by dots. */
  public String key() {
    return String.join(".", path);
  }
}
