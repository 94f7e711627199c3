package lastcopy.scenario;

import java.util.List;

/**
 * Where copies stand; whatever stands there shares its mishaps.
 *
 * @param id the name in the file
 * @param mishaps what may strike there, possibly nothing
 */
public record Place(String id, List<Mishap> mishaps) {

  /** Copies the list. */
  public Place {
    Require.text(id, "place");
    mishaps = List.copyOf(mishaps);
    Require.unique(mishaps.stream().map(Mishap::id).toList(), "mishap");
  }
}
