package lastcopy.outlook;

import java.util.List;

/**
 * Something that counts as never happening, or as taking no time, because the scenario says nothing
 * about it.
 *
 * @param kind what
 * @param where the places or copies of which nothing is said, where something is said of others;
 *     empty if nothing is said at all
 */
public record Omission(Kind kind, List<String> where) {

  /** Copies the list. */
  public Omission {
    where = List.copyOf(where);
  }

  /** What may be left out; the worst first. */
  public enum Kind {
    /** Mishaps of a place, although no place has any. */
    PLACE_MISHAPS("place-mishaps"),
    /** Deletion by mistake. */
    DELETION("deletion"),
    /** Malware. */
    MALWARE("malware"),
    /** How long a deletion goes unnoticed. */
    DELETION_SEEN_AT_ONCE("deletion-seen-at-once"),
    /** How long malware goes unnoticed. */
    MALWARE_SEEN_AT_ONCE("malware-seen-at-once"),
    /** Mishaps of some places, where others have some. */
    MISHAPS_OF_SOME_PLACES("mishaps-of-some-places"),
    /** How long a failure goes unnoticed. */
    FAILURES_SEEN_AT_ONCE("failures-seen-at-once"),
    /** How long a replacement takes to be there. */
    REPLACED_AT_ONCE("replaced-at-once"),
    /** Fed copies that turn out unusable. */
    SPOILS("spoils"),
    /** Bits that cannot be read. */
    READ_ERRORS("read-errors"),
    /** Drives that share a fate because they were made alike. */
    BATCH("batch");

    private final String id;

    Kind(String id) {
      this.id = id;
    }

    /** Stable, for other programs. */
    public String id() {
      return id;
    }
  }
}
