package lastcopy.scenario;

import java.util.List;

/**
 * Where copies stand; whatever stands there shares its mishaps.
 *
 * @param id the name in the file
 * @param mishaps what may strike there, possibly nothing
 */
public record Place(String id, List<Mishap> mishaps) {

  /** The place of a copy of which none is stated: its own, without mishaps. */
  public static Place ofItsOwn(String copy) {
    return new Place("copy:" + copy, List.of());
  }

  /** A place with these mishaps, possibly none. */
  public static Place of(String id, Mishap... mishaps) {
    return new Place(id, List.of(mishaps));
  }

  /** Copies the list. */
  public Place {
    Require.text(id, "place");
    mishaps = List.copyOf(mishaps);
    Require.unique(mishaps.stream().map(Mishap::id).toList(), "mishap");
  }
}
