/**
 * What plain histories lose, counted and turned into figures: a {@link
 * lastcopy.simulate.count.Chunk} of histories is simulated into one {@link
 * lastcopy.simulate.count.LossTally} for each layout, tallies are merged, and {@link
 * lastcopy.simulate.count.PlainFigures} reads each figure with its interval. {@link
 * lastcopy.simulate.count.Figures} is what all figures have in common, {@link
 * lastcopy.simulate.count.Goal} how precise they are to be.
 */
package lastcopy.simulate.count;
