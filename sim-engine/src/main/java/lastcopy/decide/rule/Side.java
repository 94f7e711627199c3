package lastcopy.decide.rule;

import lastcopy.interval.Estimate;

/** On which side of a limit an amount lies; near it, that of its estimate. */
enum Side {
  UNDER,
  OVER,
  /** Its interval reaches too far beyond the limit. */
  OPEN;

  static Side of(Estimate amount, double limit, double zone) {
    if (amount.value() <= limit) {
      return amount.high() <= limit * zone ? UNDER : OPEN;
    }
    return amount.low() > limit / zone ? OVER : OPEN;
  }
}
