package lastcopy.history.report;

import java.util.EnumMap;
import java.util.Map;

/**
 * Why footage was lost: what struck, and what was already down or behind. The set is bounded.
 *
 * @param id stable, for example {@code drive+rebuild} or {@code place:fire+behind:days}
 * @param sentence for a layman
 */
public record Cause(String id, String sentence) {

  /** What was already wrong when it struck. */
  public enum Context {
    /** Nothing: what was lost stood in that one copy only. */
    ALONE("", ""),
    /** Another drive of the set was down, and that was known. */
    REBUILD("+rebuild", " while another drive of the set was being replaced or rebuilt"),
    /** Another drive of the set was down, and of at least one nobody knew. */
    UNSEEN("+unseen", " while another drive of the set had failed and nobody had seen it"),
    /** Another copy was unusable and nobody knew. */
    SPOILT("+spoilt", " while another copy was unusable and nobody knew"),
    /** Another copy was gone or being filled again. */
    AWAY("+away", " while another copy was gone or not yet full again"),
    /** The other copies did not have it; the oldest of it was shot less than a day before. */
    BEHIND_HOURS("+behind:hours", " while no other copy had what was shot within the last day"),
    /** The same, days before. */
    BEHIND_DAYS("+behind:days", " while no other copy had what had been shot days before"),
    /** The same, weeks before. */
    BEHIND_WEEKS("+behind:weeks", " while no other copy had what had been shot weeks before"),
    /** The same, longer before. */
    BEHIND_LONGER(
        "+behind:longer", " while no other copy had what had been shot over a month before"),
    /** It was deleted or destroyed elsewhere and nobody had noticed. */
    DELETED("+deleted", " while nobody had noticed that it was deleted or destroyed elsewhere"),
    /** The last copy that kept what was deleted dropped it. */
    LATE("+late", ", and the last copy dropped it before anybody had noticed"),
    /** Only camera cards held it, and they were formatted. */
    CARDS("+cards", ", and the camera cards were formatted before another copy had it"),
    /** A rebuild met it. */
    MET_BY_REBUILD("+rebuild", " needed to rebuild a drive"),
    /** A refill met it. */
    MET_BY_REFILL("+refill", " needed to fill a copy again");

    private final String suffix;
    private final String words;

    Context(String suffix, String words) {
      this.suffix = suffix;
      this.words = words;
    }

    /** The context of footage that was shot so many hours before and that no other copy has. */
    public static Context behind(double hours) {
      if (hours < 24) {
        return BEHIND_HOURS;
      }
      if (hours < 168) {
        return BEHIND_DAYS;
      }
      return hours < 730 ? BEHIND_WEEKS : BEHIND_LONGER;
    }
  }

  /** A cause for each context of one kind of strike. */
  public static Map<Context, Cause> family(String id, String sentence) {
    Map<Context, Cause> all = new EnumMap<>(Context.class);
    for (Context context : Context.values()) {
      all.put(context, new Cause(id + context.suffix, sentence + context.words));
    }
    return all;
  }
}
