package lastcopy.kernel;

/** The order of what happens at one instant, first to last. */
public enum Priority {
  /** Failures and mishaps. */
  FAILURE,
  /** Returns, finished repairs, what a link has carried across. */
  RETURN,
  /** Looks and notices. */
  LOOK,
  /** Versions dropped, cards expired. */
  EXPIRY,
  /** Feed runs that start. */
  FEED_RUN,
  /** Offloads of shoots. */
  OFFLOAD
}
