package lastcopy.outlook;

import java.util.List;

/**
 * What one kind of mishap does to each copy of a layout, as far as no luck is needed to say so.
 *
 * @param kind which
 * @param names of what strikes and where, such as "fire" and "studio"; empty where the kind says it
 * @param counted whether the scenario gives it a rate, so that the figures count it
 * @param fates one for each copy, in the order of the layout
 */
public record Threat(Kind kind, List<String> names, boolean counted, List<Fate> fates) {

  /** Copies the lists. */
  public Threat {
    names = List.copyOf(names);
    fates = List.copyOf(fates);
  }

  /** Kinds of mishap. */
  public enum Kind {
    /** One drive of the copy itself fails. */
    DRIVE,
    /** A mishap of a place; the names are those of its mishaps and, last, of the place. */
    PLACE,
    /** A mishap of a box; the name is the box's. */
    BOX,
    /** Somebody deletes footage by mistake. */
    DELETION,
    /** Malware destroys what it can reach. */
    MALWARE
  }

  /** What becomes of a copy. */
  public sealed interface Fate permits Stands, Goes, Follows, Holds, Unconcerned {}

  /** It still holds the footage. */
  public record Stands() implements Fate {}

  /** It holds it no longer. */
  public record Goes() implements Fate {}

  /** It holds it until it is fed the next time, and no longer if nobody notices before that. */
  public record Follows() implements Fate {}

  /**
   * It goes on holding what was there before for a while.
   *
   * @param hours how long, above 0; infinite for good
   */
  public record Holds(double hours) implements Fate {}

  /** It has no such part. */
  public record Unconcerned() implements Fate {}
}
