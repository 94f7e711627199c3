/**
 * Charts of a result: result, dataset, chart, file. Nothing here computes a probability. {@link
 * lastcopy.charts.ChartFiles} writes them; {@link lastcopy.charts.LossCurveChart} and {@link
 * lastcopy.charts.ExceedanceChart} are the two, and {@link lastcopy.charts.Look} is what they have
 * in common.
 */
package lastcopy.charts;
