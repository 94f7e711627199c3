/**
 * Every confidence interval and every tally of the project. An {@link lastcopy.interval.Estimate}
 * is a figure with its interval; {@link lastcopy.interval.Proportions} makes them of counts, {@link
 * lastcopy.interval.MeanTally} of plain histories and {@link lastcopy.interval.WeightedTally} of
 * weighted ones; {@link lastcopy.interval.PairedRatio} and {@link
 * lastcopy.interval.IndependentRatio} compare two layouts. Whoever shows a figure carries its
 * {@link lastcopy.interval.Estimate} unchanged.
 */
package lastcopy.interval;
