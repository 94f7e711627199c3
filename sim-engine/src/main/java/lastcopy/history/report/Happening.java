package lastcopy.history.report;

/**
 * One thing that happens in a history, told to a {@link HistoryListener}.
 *
 * @param kind what
 * @param hours when, in hours from the start
 * @param copy the copy that it happens to, an index into {@code History.copyNames}; −1 if none
 * @param drive the drive of the copy, from 0; −1 if none
 * @param bytes how much, by kind; 0 if it does not apply
 * @param until when it is expected to end, in hours from the start, by kind; NaN if not known
 * @param subject names the mishap, the source of a refill, or the cause, by kind; may be empty
 */
public record Happening(
    Kind kind, double hours, int copy, int drive, double bytes, double until, String subject) {

  /** Kinds of happenings. */
  public enum Kind {
    /** The history begins. */
    START,
    /** A drive fails; {@code until}: when it is expected whole again, if its set survives. */
    DRIVE_FAILED,
    /** A replaced drive is whole again. */
    DRIVE_READY,
    /** A drive is swapped for a new one at its planned age. */
    DRIVE_SWAPPED,
    /** Another drive of a shelf enters service. */
    DRIVE_ADDED,
    /** A mishap strikes a place, a box or a service; {@code subject} names it. */
    MISHAP,
    /**
     * A copy is gone; {@code bytes} it held, {@code until} it has hardware again; of mirrored pairs
     * {@code drive} is the one that failed last, if it was a drive.
     */
    COPY_GONE,
    /** A copy has hardware again. */
    COPY_BACK,
    /** A refill starts; {@code subject} the copy it comes from, {@code bytes}, {@code until}. */
    REFILL_STARTED,
    /** A drive with {@code bytes} is carried to a copy; {@code until} it is there. */
    CARRIED,
    /** Everything that the other copies hold is back on the copy. */
    REFILLED,
    /** Unreadable spots cost clips of a copy; {@code bytes} before other copies helped out. */
    UNREADABLE,
    /** A copy becomes unusable and nobody knows; {@code bytes} it held. */
    SPOILT,
    /** A restore is tried and the copy found unusable. */
    SPOIL_FOUND,
    /** A block is deleted by mistake; {@code bytes}, {@code until} it will be noticed. */
    DELETED,
    /** Malware strikes; {@code bytes} of the copies in reach, {@code until} it will be noticed. */
    MALWARE,
    /** A deletion or malware reaches a copy with a feed; {@code until} the copy drops it. */
    DELETION_ARRIVED,
    /** A copy drops what it still held of a deletion; {@code bytes}. */
    DROPPED,
    /** A deletion or malware is noticed; {@code bytes} are put back. */
    NOTICED,
    /** A feed stops and nobody sees it. */
    FEED_STOPPED,
    /** Somebody looks and the feed goes on. */
    FEED_SEEN,
    /** Camera cards are formatted that alone still held something; {@code bytes}. */
    CARDS_EXPIRED,
    /** Footage is lost; {@code bytes}, {@code subject} the sentence of its cause. */
    LOST,
    /** The horizon. */
    END
  }
}
