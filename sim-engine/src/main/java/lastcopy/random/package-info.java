/**
 * Random numbers keyed by seed, history and what the draw is for ({@link
 * lastcopy.random.KeyedRandom}, {@link lastcopy.random.SourceKey}): no draw depends on how many
 * were drawn before, so a history can be replayed by its number alone, and layouts share the luck
 * of what they share.
 */
package lastcopy.random;
