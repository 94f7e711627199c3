package lastcopy.typical;

/** Kinds of drives of which typical lives are told. */
public enum DriveKind {
  /** A 3.5 inch hard disk in a box or on a desk. */
  HARD_DISK("hard-disk", "hard disks"),
  /** A portable 2.5 inch hard disk. */
  PORTABLE("portable", "portable hard disks"),
  /** A hard disk bought used. */
  USED_HARD_DISK("used-hard-disk", "used hard disks"),
  /** A solid-state drive. */
  SOLID_STATE("solid-state", "solid-state drives");

  private final String id;
  private final String plural;

  DriveKind(String id, String plural) {
    this.id = id;
    this.plural = plural;
  }

  /** Its name in files and options. */
  public String id() {
    return id;
  }

  /** What several are called. */
  public String plural() {
    return plural;
  }
}
