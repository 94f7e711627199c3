package lastcopy.history;

import java.util.Map;

/**
 * A Poisson process that strikes: a mishap of a place or box, of the desk, of a copy or its feed.
 *
 * @param kind what it does
 * @param source key of its draws
 * @param perHour its hazard
 * @param copies the copies that it may strike
 * @param takes chance that a copy that it strikes goes
 * @param takesKeys by copy of {@code copies}, then one for camera cards
 * @param strikesCards whether it strikes camera cards
 * @param placeId where it strikes; empty if not at a place
 * @param words what a layman calls it
 * @param causes its causes by context
 */
record ShockProcess(
    Kind kind,
    long source,
    double perHour,
    int[] copies,
    double takes,
    long[] takesKeys,
    boolean strikesCards,
    String placeId,
    String words,
    Map<Cause.Context, Cause> causes) {

  /** What a strike does. */
  enum Kind {
    PLACE,
    BOX,
    DELETION,
    MALWARE,
    SPOIL,
    STOP
  }
}
