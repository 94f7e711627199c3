/**
 * What is known before a history begins: a layout compiled once into a {@link
 * lastcopy.history.plan.Plan} of records, one for each copy, each drive and each process of shocks,
 * which every history reads and none changes; and the luck of a history, keyed by what it is for
 * ({@link lastcopy.history.plan.Draws}), with the times of repairs, which are the same luck
 * wherever a history is decided.
 */
package lastcopy.history.plan;
