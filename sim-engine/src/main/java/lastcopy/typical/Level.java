package lastcopy.typical;

/** How gloomy a typical value is. */
public enum Level {
  /** What the best models do. */
  LOW,
  /** The best guess. */
  CENTRAL,
  /** What a careful owner reckons with. */
  CAUTIOUS
}
