/**
 * Footage as positions: bytes in the order of shooting ({@link lastcopy.footage.ShootTable}), what
 * is held as sets of intervals of them ({@link lastcopy.footage.PositionSet}), and what feeds carry
 * while nothing fails ({@link lastcopy.footage.FeedForecast}): the runs of each and what a copy
 * holds by any time. No draws, no failures. Times are hours.
 */
package lastcopy.footage;
