package lastcopy.history;

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
    /** Another drive of the set was down. */
    REBUILD("+rebuild", " while another drive of the set was still being replaced"),
    /** Another copy was gone or being filled again. */
    AWAY("+away", " while another copy was gone or not yet full again"),
    /** The other copies had not received it yet, for less than a day. */
    BEHIND_HOURS("+behind:hours", " before the other copy had the newest footage (under a day)"),
    /** The same, for days. */
    BEHIND_DAYS("+behind:days", " before the other copy had the newest footage (days behind)"),
    /** The same, for weeks. */
    BEHIND_WEEKS("+behind:weeks", " before the other copy had the newest footage (weeks behind)"),
    /** The same, for longer. */
    BEHIND_LONGER("+behind:longer", " before the other copy had its footage (over a month behind)"),
    /** It was deleted elsewhere and nobody had noticed. */
    DELETED("+deleted", " while the footage was deleted elsewhere and nobody had noticed"),
    /** The last copy that kept what was deleted dropped it. */
    LATE("+late", ", and it was noticed only after the last copy had dropped it"),
    /** Only camera cards held it, and they were formatted. */
    CARDS("+cards", ", and the camera cards were formatted before another copy had it"),
    /** A rebuild or refill met it. */
    MET_BY_REBUILD("+rebuild", " met while a drive was rebuilt"),
    /** A refill met it. */
    MET_BY_REFILL("+refill", " met while a copy was filled again");

    private final String suffix;
    private final String words;

    Context(String suffix, String words) {
      this.suffix = suffix;
      this.words = words;
    }

    /** The context of footage that lags by so many hours. */
    static Context behind(double hours) {
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
  static Map<Context, Cause> family(String id, String sentence) {
    Map<Context, Cause> all = new EnumMap<>(Context.class);
    for (Context context : Context.values()) {
      all.put(context, new Cause(id + context.suffix, sentence + context.words));
    }
    return all;
  }
}
