/**
 * Lifetimes from records: survival curves, laws by maximum likelihood, intervals, comparisons. Ages
 * are in whatever unit the records have; results are in the same.
 */
package lastcopy.fit;
