/** Charts of a result: result, dataset, chart, file. Nothing here computes a probability. */
package lastcopy.charts;
