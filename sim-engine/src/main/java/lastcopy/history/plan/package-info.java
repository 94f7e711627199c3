/**
 * What is known before a history begins: a layout compiled once into a {@link
 * lastcopy.history.plan.Plan} of records, one for each copy, each drive and each process of shocks,
 * which every history reads and none changes; what all of them hold as long as nothing fails
 * ({@link lastcopy.history.plan.UndisturbedCourse}); and the luck of a history, keyed by what it is
 * for ({@link lastcopy.history.plan.Draws}), with what is the same luck wherever a history is
 * decided: times of repairs, random shoots.
 */
package lastcopy.history.plan;
