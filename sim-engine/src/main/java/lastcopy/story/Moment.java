package lastcopy.story;

import lastcopy.history.report.Happening;
import lastcopy.history.report.Snapshot;

/**
 * A happening of a told history, and how things stood just after it.
 *
 * @param happening what happened
 * @param scene what each copy held then
 */
public record Moment(Happening happening, Snapshot scene) {

  /** When, in hours from the start. */
  public double hours() {
    return happening.hours();
  }

  /** What kind of thing happened. */
  public Happening.Kind kind() {
    return happening.kind();
  }

  /** Whether it belongs to any history, however lucky: its ends, and what was planned. */
  public boolean routine() {
    return switch (kind()) {
      case START, END, DRIVE_SWAPPED, DRIVE_ADDED -> true;
      default -> false;
    };
  }
}
