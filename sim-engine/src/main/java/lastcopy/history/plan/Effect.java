package lastcopy.history.plan;

/**
 * What a mechanism can do to a copy, for whoever decides about a copy without simulating all of
 * them: nothing is passed over that it does not say it reckons with.
 */
public enum Effect {
  /** Drives or services fail, each by its own law. */
  FAILURES,
  /** Failed drives are repaired, in a time that depends on nothing else. */
  REPAIRS,
  /** The time of a rebuild depends on what the copy holds. */
  REBUILDS_OF_WHAT_IS_HELD,
  /** Drives of a set are strained while others are down. */
  STRAIN,
  /** Drives share the frailty of a batch. */
  SHARED_FRAILTY,
  /** Drives wear otherwise while they are off between visits. */
  REST_BETWEEN_VISITS,
  /** Drives are swapped at a planned age. */
  PLANNED_SWAPS,
  /** A set is gone when both drives of one pair are down. */
  PAIRS,
  /** Drives of a set are of several models, each with a law of its own. */
  UNLIKE_DRIVES,
  /** Each drive is by itself. */
  SEPARATE_DRIVES,
  /** Bits cannot be read once there is no redundancy. */
  READ_ERRORS,
  /** Spots have become unreadable that are met once there is no redundancy. */
  LATENT_DEFECTS,
  /** A process of shocks strikes, which is a source of luck by itself. */
  SHOCKS,
  /** Nobody has said what. */
  UNKNOWN
}
