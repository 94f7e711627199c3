package lastcopy.experiment;

/** How losses are to be estimated. */
public enum Method {
  /** Each layout as a pilot of plain histories says: biased where that is much faster. */
  AUTO,
  /** Histories as they fall. */
  PLAIN,
  /** Histories biased towards losses, with weights. */
  RARE
}
