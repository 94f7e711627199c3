package lastcopy.outlook.room;

import java.util.List;

/**
 * Room and ways of one copy.
 *
 * @param copy its id
 * @param dues when it outgrows its fill limit; empty if not by the horizon, and for a service
 * @param limits each way into it with what limits it
 */
public record CopyRoom(String copy, List<DriveDue> dues, List<WayLimit> limits) {

  /** Copies the lists. */
  public CopyRoom {
    dues = List.copyOf(dues);
    limits = List.copyOf(limits);
  }
}
