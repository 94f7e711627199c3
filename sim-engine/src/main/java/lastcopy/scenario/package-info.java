/**
 * A studio as immutable records that check themselves: {@link lastcopy.scenario.Studio} holds the
 * footage, the desk and the {@link lastcopy.scenario.Layout} records to compare, each a list of
 * {@link lastcopy.scenario.Copy} records with where it stands, on what ({@link
 * lastcopy.scenario.Medium}) and how it is fed ({@link lastcopy.scenario.Feed}). Times are hours,
 * sizes bytes, rates per hour ({@link lastcopy.scenario.Units}). What a record accepts can be
 * simulated.
 */
package lastcopy.scenario;
