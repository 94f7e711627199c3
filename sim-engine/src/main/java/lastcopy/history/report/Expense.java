package lastcopy.history.report;

import java.util.Locale;

/** What money is paid for. */
public enum Expense {
  /** Drives that enter service, replacements and planned swaps. */
  DRIVES,
  /** Enclosures, and those that take the place of destroyed ones. */
  BOXES,
  /** Storage that is paid by the amount and the month. */
  SERVICES,
  /** Energy of drives and boxes. */
  POWER,
  /** The owner's own time. */
  WORK,
  /** Whatever else a layout takes. */
  OTHER;

  /** A stable name for files. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
