package lastcopy.outlook.room;

import java.util.List;
import java.util.Optional;

/**
 * Room and time of one layout.
 *
 * @param layout its id
 * @param copies one for each copy, in the order of the layout
 * @param offload onto the working copy; empty if that is a service
 * @param streams from the working copy; empty if none was asked for, or it is a service
 */
public record LayoutRoom(
    String layout, List<CopyRoom> copies, Optional<Offload> offload, Optional<Streams> streams) {

  /** Copies the list. */
  public LayoutRoom {
    copies = List.copyOf(copies);
  }

  /** The copy of an id. */
  public CopyRoom copy(String id) {
    return copies.stream().filter(copy -> copy.copy().equals(id)).findFirst().orElseThrow();
  }
}
