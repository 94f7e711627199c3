package lastcopy.cli.levers.deed;

import java.util.List;
import lastcopy.cli.edit.Change;

/**
 * One change of a layout, or of the whole studio as a yardstick.
 *
 * @param id stable, unique in a layout
 * @param title what an owner would call it, a few words
 * @param changes of the file
 * @param assumes what it takes for granted beyond the file, sentences
 * @param isPriced whether the file has a price for all that it takes
 * @param isYardstick whether it is no deed but a measure of how much something matters
 */
public record Deed(
    String id,
    String title,
    List<Change> changes,
    List<String> assumes,
    boolean isPriced,
    boolean isYardstick) {

  /** Copies the lists. */
  public Deed {
    changes = List.copyOf(changes);
    assumes = List.copyOf(assumes);
  }

  /** A deed that takes nothing for granted. */
  static Deed of(String id, String title, List<Change> changes) {
    return new Deed(id, title, changes, List.of(), true, false);
  }
}
