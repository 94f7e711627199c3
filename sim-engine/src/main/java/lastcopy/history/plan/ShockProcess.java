package lastcopy.history.plan;

import java.util.Map;
import lastcopy.history.report.Cause;
import lastcopy.law.Law;

/**
 * A Poisson process of shocks: mishaps of a place or box, of the desk, of a copy or its feed.
 *
 * @param index its number among those of a layout
 * @param kind what it does
 * @param source key of its draws
 * @param perHour its hazard
 * @param copies the copies that it may strike
 * @param takes chance that a copy that it strikes goes
 * @param takesKeys by copy of {@code copies}, then one for camera cards
 * @param strikesCards whether it strikes camera cards
 * @param placeId where it strikes; empty if not at a place
 * @param noticed law of the hours until somebody notices, of the desk; null for any other
 * @param words what a layman calls it
 * @param causes its causes by context
 */
public record ShockProcess(
    int index,
    Kind kind,
    long source,
    double perHour,
    int[] copies,
    double takes,
    long[] takesKeys,
    boolean strikesCards,
    String placeId,
    Law noticed,
    String words,
    Map<Cause.Context, Cause> causes) {

  /** What a shock does. */
  public enum Kind {
    /** A mishap of a place: may take each copy there, and camera cards. */
    PLACE,
    /** A mishap of a box: takes each copy in it. */
    BOX,
    /** Somebody deletes a block by mistake. */
    DELETION,
    /** Malware destroys all in reach. */
    MALWARE,
    /** A copy becomes unusable and nobody knows. */
    SPOIL,
    /** A feed stops and nobody sees it. */
    STOP
  }

  /** The key of when the k-th shock comes after the one before. */
  public long key(int k) {
    return Draws.key(source, Draws.STRIKE, k);
  }

  /** Whether it may strike a copy. */
  public boolean mayStrike(int copy) {
    for (int each : copies) {
      if (each == copy) {
        return true;
      }
    }
    return false;
  }

  /** Whether it strikes at the desk, and somebody has to notice. */
  public boolean isAtDesk() {
    return noticed != null;
  }
}
